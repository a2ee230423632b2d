// A focal length and a distance at which nothing was measured yet.
import { Field } from '../parts/field.tsx';
import { useSurroundings } from '../useSession.ts';
import { distanceText } from './typedKit.ts';

export function NewSituation() {
  const { start } = useSurroundings();
  const draft = start.draft.value;
  return (
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
  );
}
