// A lens that is not in the kit yet.
import { Field } from '../parts/field.tsx';
import { useSurroundings } from '../useSession.ts';

export function NewLens({ another }: { readonly another: boolean }) {
  const { start } = useSurroundings();
  const { lensName, faults } = start.draft.value;
  return (
    <Field
      label={another ? 'Name of the new lens' : 'Lens'}
      text={lensName}
      fault={faults.lensName}
      hint="With a converter, name both."
      onTyped={(text) => start.change({ lensName: text })}
    />
  );
}
