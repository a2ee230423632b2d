// The situation: one that was measured before, or a new focal length and distance.
import { lastValues } from './lastValues.ts';
import { late } from '../parts/late.tsx';
import { Pick } from '../parts/pick.tsx';
import { useSurroundings } from '../useSession.ts';
import { inMetres, inMillimetres } from '../words/quantities.ts';
import { NEW, type Picks } from './draft.ts';

const NewSituation = late(async () => (await import('./newKit.tsx')).NewSituation);

export function SituationPick({ picks }: { readonly picks: Picks }) {
  const { session, start } = useSurroundings();
  const last = lastValues(session.records.value);
  const known = picks.situations.map(({ id, focalLength, distance }) => ({
    value: id,
    label: `${inMillimetres(focalLength)} at ${inMetres(distance)}`,
    note: last.get(id) ?? 'not measured yet',
  }));
  return (
    <>
      {known.length > 0 && (
        <Pick
          legend="Focal length and distance"
          options={[...known, { value: NEW, label: 'Another focal length or distance' }]}
          chosen={picks.situation?.id ?? NEW}
          onChoose={(situation) => start.change({ situation })}
        />
      )}
      {picks.situation === null && <NewSituation />}
    </>
  );
}
