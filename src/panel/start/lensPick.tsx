// The lens: one of the kit, or a new one. A converter goes into the name, because the pair is measured as one lens.
import { Choose } from '../parts/choose.tsx';
import { Field } from '../parts/field.tsx';
import { useSurroundings } from '../useSession.ts';
import { NEW, type Picks } from './draft.ts';

export function LensPick({ picks }: { readonly picks: Picks }) {
  const { session, start } = useSurroundings();
  const { lenses } = session.kit.value;
  const { lensName, faults } = start.draft.value;
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
      {picks.lens === null && (
        <Field
          label={lenses.length > 0 ? 'Name of the new lens' : 'Lens'}
          text={lensName}
          fault={faults.lensName}
          hint="With a converter, name both."
          onTyped={(text) => start.change({ lensName: text })}
        />
      )}
    </>
  );
}
