// What the set-up walk depends on.
import { Tick } from '../parts/tick.tsx';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { BenchRoom } from './benchRoom.tsx';
import { tickIn, traitsAt } from './fields.ts';
import type { KitTraits } from './untyped.ts';
import { Choosing } from './typing.tsx';

export function WalkCard() {
  const { walk: say, choices } = words('bench');
  const { bench } = useSurroundings();
  const traits = traitsAt(bench);
  return (
    <BenchRoom title={say.title}>
      <p>{say.what}</p>
      <Choosing field="version" from={choices.version} />
      <fieldset>
        <legend>{say.kit}</legend>
        {TRAITS.map((trait) => (
          <Tick key={trait} label={say.traits[trait]} on={traits[trait]} onChange={(on) => tickIn(bench, { [trait]: on })} />
        ))}
      </fieldset>
    </BenchRoom>
  );
}

const TRAITS: readonly (keyof KitTraits)[] = ['bodyStabiliser', 'lensStabiliser', 'liveView', 'rearButton', 'manualAtBody', 'zoom', 'heavy'];
