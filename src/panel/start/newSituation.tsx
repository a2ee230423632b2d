// A focal length and a distance at which nothing was measured yet.
import { Field } from '../parts/field.tsx';
import { useSurroundings } from '../useSession.ts';
import type { Picks } from './draft.ts';
import { distanceText, focalLengthText } from './typedKit.ts';

export function NewSituation({ picks }: { readonly picks: Picks }) {
  const { start } = useSurroundings();
  const draft = start.draft.value;
  return (
    <>
      <Field
        label="Focal length, mm"
        text={focalLengthText(draft, picks)}
        fault={draft.faults.focalLength}
        {...(picks.converter ? { hint: 'As engraved on the lens, without the converter.' } : {})}
        numeric
        onTyped={(text) => start.change({ focalLength: text })}
      />
      <Field
        label="Distance to the target, m"
        text={distanceText(draft, picks)}
        fault={draft.faults.distance}
        hint="50 focal lengths is common practice; better, the distance you shoot at."
        numeric
        onTyped={(text) => start.change({ distance: text })}
      />
    </>
  );
}
