// The lights, their marks, and how each counts (common practice, no source).
import { FourLights } from '../lights/fourLights.tsx';
import { LightShape } from '../strip/lightShape.tsx';
import type { Light } from '../../sweep/verdict.ts';

export function LightTable() {
  return (
    <section aria-labelledby="lights">
      <h2 id="lights">What the light tells</h2>
      <FourLights />
      <table>
        <thead>
          <tr>
            <th scope="col">Light</th>
            <th scope="col">Counts as</th>
          </tr>
        </thead>
        <tbody>
          {LIGHTS.map(({ light, seen, counts }) => (
            <tr key={light}>
              <th scope="row" class="seen">
                <LightShape light={light} />
                {seen}
              </th>
              <td>{counts}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        A small triangle beside a mark is an arrow of the viewfinder. A steady light with one arrow counts as out. Steady is only
        credited when the whole hold has run.
      </p>
    </section>
  );
}

const LIGHTS: readonly { readonly light: Light; readonly seen: string; readonly counts: string }[] = [
  { light: 'steady', seen: 'On at once, unbroken', counts: 'in' },
  { light: 'late', seen: 'Came on late', counts: 'out, close' },
  { light: 'flicker', seen: 'Went out, even once', counts: 'out' },
  { light: 'dark', seen: 'Never came on', counts: 'out, far' },
  { light: 'untold', seen: 'Failed, not said how', counts: 'out' },
];
