// What the set-up walk depends on, and the way into it.
import { Tick } from '../parts/tick.tsx';
import { useSurroundings } from '../useSession.ts';
import type { Reckoned } from './reckon.ts';
import { tickIn, traitsAt } from './fields.ts';
import type { KitTraits } from './untyped.ts';
import { Choosing } from './typing.tsx';

export function WalkCard({ reckoned }: { readonly reckoned: Reckoned }) {
  const { bench, way } = useSurroundings();
  const traits = traitsAt(bench);
  const ready = reckoned.rig !== null;
  return (
    <section class="card" aria-labelledby="bench-walk">
      <h2 id="bench-walk">Set-up walk</h2>
      <p>One step at a time, spoken and shown; what you tick and read is kept with the sweep.</p>
      <Choosing field="version" label="Version" options={VERSIONS} />
      <details>
        <summary>What the kit has</summary>
        {TRAITS.map(([trait, label]) => (
          <Tick key={trait} label={label} on={traits[trait]} onChange={(on) => tickIn(bench, { [trait]: on })} />
        ))}
      </details>
      {!ready && <output>Enter the widest aperture above, and mend what is marked, to begin.</output>}
      <button type="button" class="chief" disabled={!ready} onClick={() => way.go({ at: 'walk' })}>
        Walk through the set-up
      </button>
    </section>
  );
}

const VERSIONS = [
  { value: 'long', label: 'every step' },
  { value: 'short', label: 'short, for those who know it' },
];
const TRAITS: readonly (readonly [keyof KitTraits, string])[] = [
  ['bodyStabiliser', 'Stabiliser in the body'],
  ['lensStabiliser', 'Stabiliser in the lens'],
  ['liveView', 'Live view'],
  ['rearButton', 'Focus by a rear button'],
  ['manualAtBody', 'Manual focus set at the body'],
  ['zoom', 'Zoom lens'],
  ['heavy', 'Lens with its own tripod foot'],
];
