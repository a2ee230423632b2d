// The way into the set-up walk.
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import type { Reckoned } from './reckon.ts';

export function WalkButton({ reckoned }: { readonly reckoned: Reckoned }) {
  const { walk: say } = words('bench');
  const { way } = useSurroundings();
  const ready = reckoned.rig !== null;
  return (
    <>
      {!ready && <output>{say.notYet}</output>}
      <button type="button" class="chief" disabled={!ready} onClick={() => way.go({ at: 'walk' })}>
        {say.begin}
      </button>
    </>
  );
}
