// The corrections a body lets one dial in.
import { Field } from '../parts/field.tsx';
import { useSurroundings } from '../useSession.ts';

export function ScaleFields() {
  const { start } = useSurroundings();
  const { min, max, step, faults } = start.draft.value;
  return (
    <fieldset>
      <legend>Its scale of corrections</legend>
      <div class="thirds">
        <Field label="Lowest" text={min} fault={faults.min} onTyped={(text) => start.change({ min: text })} />
        <Field label="Highest" text={max} fault={faults.max} onTyped={(text) => start.change({ max: text })} />
        <Field label="Step" text={step} fault={faults.step} onTyped={(text) => start.change({ step: text })} />
      </div>
      {faults.scale && (
        <p class="fault small" role="alert">
          {faults.scale}
        </p>
      )}
    </fieldset>
  );
}
