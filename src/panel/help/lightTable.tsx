// The lights, their marks, and how each counts (common practice, no source).
import { FourArrows } from '../lights/fourArrows.tsx';
import { FourLights } from '../lights/fourLights.tsx';
import { ScreenRoom } from '../parts/room.tsx';
import { LightShape } from '../strip/lightShape.tsx';
import type { Light } from '../../sweep/verdict.ts';
import { words } from '../../words/catalogue.ts';

export function LightTable() {
  const say = words('help').lights;
  return (
    <ScreenRoom title={say.title}>
      <FourLights />
      <details>
        <summary>{words('firstHold').arrows.title}</summary>
        <FourArrows />
      </details>
      <table>
        <thead>
          <tr>
            <th scope="col">{say.light}</th>
            <th scope="col">{say.counts}</th>
          </tr>
        </thead>
        <tbody>
          {LIGHTS.map((light) => (
            <tr key={light}>
              <th scope="row" class="seen">
                <LightShape light={light} />
                {say.is[light].seen}
              </th>
              <td>{say.is[light].counts}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{say.note}</p>
    </ScreenRoom>
  );
}

const LIGHTS: readonly Light[] = ['steady', 'late', 'flicker', 'dark', 'untold'];
