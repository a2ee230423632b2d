// The situation: one that was measured before, or a new focal length and distance.
import { lastValues } from './lastValues.ts';
import { Field } from '../parts/field.tsx';
import { Pick } from '../parts/pick.tsx';
import { useSurroundings } from '../useSession.ts';
import { inMetres, inMillimetres } from '../words/quantities.ts';
import { distanceText, NEW, type Picks } from './draft.ts';

export function SituationPick({ picks }: { readonly picks: Picks }) {
  const { session, start } = useSurroundings();
  const draft = start.draft.value;
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
      {picks.situation === null && (
        <>
          <Field
            label="Focal length, mm"
            text={draft.focalLength}
            fault={draft.faults.focalLength}
            numeric
            onTyped={(text) => start.change({ focalLength: text })}
          />
          <Field
            label="Distance to the target, m"
            text={distanceText(draft)}
            fault={draft.faults.distance}
            hint="50 focal lengths is common practice; better, the distance you shoot at."
            numeric
            onTyped={(text) => start.change({ distance: text })}
          />
        </>
      )}
    </>
  );
}
