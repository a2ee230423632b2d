// What the set-up walk depends on, and the way into it.
import { Tick } from '../parts/tick.tsx';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import type { Reckoned } from './reckon.ts';
import { tickIn, traitsAt } from './fields.ts';
import type { KitTraits } from './untyped.ts';
import { Choosing } from './typing.tsx';

export function WalkCard({ reckoned }: { readonly reckoned: Reckoned }) {
  const { walk: say, choices } = words('bench');
  const { bench, way } = useSurroundings();
  const traits = traitsAt(bench);
  const ready = reckoned.rig !== null;
  return (
    <section class="card" aria-labelledby="bench-walk">
      <h2 id="bench-walk">{say.title}</h2>
      <p>{say.what}</p>
      <Choosing field="version" from={choices.version} />
      <details>
        <summary>{say.kit}</summary>
        {TRAITS.map((trait) => (
          <Tick key={trait} label={say.traits[trait]} on={traits[trait]} onChange={(on) => tickIn(bench, { [trait]: on })} />
        ))}
      </details>
      {!ready && <output>{say.notYet}</output>}
      <button type="button" class="chief" disabled={!ready} onClick={() => way.go({ at: 'walk' })}>
        {say.begin}
      </button>
    </section>
  );
}

const TRAITS: readonly (keyof KitTraits)[] = ['bodyStabiliser', 'lensStabiliser', 'liveView', 'rearButton', 'manualAtBody', 'zoom', 'heavy'];
