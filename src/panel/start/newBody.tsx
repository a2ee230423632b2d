// A body that is not in the kit yet: its name, its scale and its arrows.
import { Choose } from '../parts/choose.tsx';
import { Field } from '../parts/field.tsx';
import { useSurroundings } from '../useSession.ts';
import { ScaleFields } from './scaleFields.tsx';

export function NewBody({ another }: { readonly another: boolean }) {
  const { start } = useSurroundings();
  const { bodyName, arrows, faults } = start.draft.value;
  return (
    <>
      <Field
        label={another ? 'Name of the new body' : 'Body'}
        text={bodyName}
        fault={faults.bodyName}
        hint="Your own name for it."
        onTyped={(text) => start.change({ bodyName: text })}
      />
      <ScaleFields />
      <Choose
        label="Arrows beside the focus light"
        options={ARROWS}
        chosen={arrows}
        onChoose={(chosen) => start.change({ arrows: ARROWS.find(({ value }) => value === chosen)?.value ?? arrows })}
      />
    </>
  );
}

const ARROWS = [
  { value: 'absent', label: 'It shows none' },
  { value: 'right-is-up', label: 'Right arrow: go up, towards +' },
  { value: 'right-is-down', label: 'Right arrow: go down, towards \u2212' },
] as const;
