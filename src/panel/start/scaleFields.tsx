// The corrections a body lets one dial in.
import { useId } from 'preact/hooks';
import { Field } from '../parts/field.tsx';
import { useSurroundings } from '../useSession.ts';

export function ScaleFields() {
  const { start } = useSurroundings();
  const faultAt = useId();
  const { min, max, step, faults } = start.draft.value;
  const sentences = [faults.min, faults.max, faults.step, faults.scale].filter((sentence) => sentence !== undefined);
  return (
    <fieldset>
      <legend>Its scale of corrections</legend>
      <div class="thirds">
        <Field label="From" text={min} fault={faults.min ?? faults.scale} faultAt={faultAt} onTyped={(text) => start.change({ min: text })} />
        <Field label="to" text={max} fault={faults.max ?? faults.scale} faultAt={faultAt} onTyped={(text) => start.change({ max: text })} />
        <Field label="step" text={step} fault={faults.step} faultAt={faultAt} onTyped={(text) => start.change({ step: text })} />
      </div>
      <div id={faultAt}>
        {sentences.map((sentence) => (
          <p key={sentence} class="fault small">
            {sentence}
          </p>
        ))}
      </div>
    </fieldset>
  );
}
