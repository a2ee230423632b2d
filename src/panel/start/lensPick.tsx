// The lens: one of the kit, or a new one. A converter goes into the name, because the pair is measured as one lens.
import { Choose } from '../parts/choose.tsx';
import { late } from '../parts/late.tsx';
import { useSurroundings } from '../useSession.ts';
import { NEW, type Picks } from './draft.ts';

const NewLens = late(async () => (await import('./newKit.tsx')).NewLens);

export function LensPick({ picks }: { readonly picks: Picks }) {
  const { session, start } = useSurroundings();
  const { lenses } = session.kit.value;
  return (
    <>
      {lenses.length > 0 && (
        <Choose
          label="Lens"
          options={[...lenses.map(({ id, name }) => ({ value: id, label: name })), { value: NEW, label: 'Add a lens\u2026' }]}
          chosen={picks.lens?.id ?? NEW}
          onChoose={(lens) => start.change({ lens, situation: null })}
        />
      )}
      {picks.lens === null && <NewLens another={lenses.length > 0} />}
    </>
  );
}
