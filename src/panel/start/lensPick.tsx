// The lens: one of the kit, or a new one, and the converter that stands between it and the body.
import { Choose } from '../parts/choose.tsx';
import { late } from '../parts/late.tsx';
import { useSurroundings } from '../useSession.ts';
import { BARE, NEW, type Picks } from './draft.ts';

const NewLens = late(async () => (await import('./newKit.tsx')).NewLens);

export function LensPick({ picks }: { readonly picks: Picks }) {
  const { start } = useSurroundings();
  const { lenses, converters } = picks;
  return (
    <>
      {lenses.length > 0 && (
        <Choose
          label="Lens"
          options={[...lenses.map(({ id, name }) => ({ value: id, label: name })), { value: NEW, label: 'Add a lens\u2026' }]}
          chosen={picks.lens?.id ?? NEW}
          onChoose={(lens) => start.change({ lens, converter: null, situation: null, focalLength: null, distance: null })}
        />
      )}
      {picks.lens === null && <NewLens another={lenses.length > 0} />}
      {converters.length > 0 && (
        <Choose
          label="Converter"
          options={[{ value: BARE, label: 'None' }, ...converters.map(({ id, name }) => ({ value: id, label: name }))]}
          chosen={picks.converter?.id ?? BARE}
          onChoose={(converter) => start.change({ converter, situation: null })}
        />
      )}
    </>
  );
}
