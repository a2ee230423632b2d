// What was measured, entered and photographed, newest first, in words; a sweep opens with every hold of it.
import { linesOf, type History } from '../../logbook/history.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { PhotographedLine } from './photographedLine.tsx';

export function HistoryLines({ history }: { readonly history: History }) {
  const { way } = useSurroundings();
  const say = words('situation').history;
  const { inLine } = words('conditions');
  const lines = linesOf(history);
  if (lines.length === 0) return <p class="muted">{say.none}</p>;
  return (
    <section aria-labelledby="history">
      <h2 id="history">{say.title}</h2>
      <ul class="plain history">
        {lines.map((line) => {
          if (line.line === 'entered') {
            const { id, value, conditions } = line.entry;
            return (
              <li key={id}>
                <b>{writeSteps(value)}</b> {say.entered(line.entry)}
                <small>{inLine(conditions)}</small>
              </li>
            );
          }
          if (line.line === 'photographed') {
            return (
              <li key={line.record.id}>
                <PhotographedLine record={line.record} />
              </li>
            );
          }
          const { id, by, chosen, found, conditions } = line.measured;
          return (
            <li key={id}>
              <b>{chosen === null ? say.noValue[found] : writeSteps(chosen)}</b> {say.measured(line.measured)}
              <small>{say.facts(line.measured)}</small>
              <small>{inLine(conditions)}</small>
              {by === 'sweep' && (
                <button type="button" class="link" onClick={() => way.go({ at: 'record', id })}>
                  {say.seeHolds}
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
