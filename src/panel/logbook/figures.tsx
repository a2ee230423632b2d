// The figures of a situation: of its newest measurement, and of all its sweeps together.
import { combine, estimateOf } from '../../logbook/combined.ts';
import type { Shelved } from '../../logbook/shelf.ts';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { ScreenRoom } from '../parts/room.tsx';

export function Figures({ shelved: { measured, history } }: { readonly shelved: Shelved }) {
  const say = words('situation');
  const all = combine(history.measured.flatMap((one) => estimateOf(one) ?? []));
  const newest = measured ? say.figures(measured) : [];
  if (newest.length === 0 && !all) return null;
  return (
    <ScreenRoom title={say.rooms.figures}>
      {newest.length > 0 && (
        <table>
          <tbody>
            {newest.map(({ what, is }) => (
              <tr key={what}>
                <th scope="row">{what}</th>
                <td>{is}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {all && (
        <div class="stack">
          <h3>{say.repeated.title(all.count)}</h3>
          <p>{say.repeated.centre(all.random)}</p>
          <p class="small">{run(say.repeated.scatter(all))}</p>
        </div>
      )}
    </ScreenRoom>
  );
}
