// The body: one of the kit, or a new one with its scale and its arrows.
import { Choose } from '../parts/choose.tsx';
import { Field } from '../parts/field.tsx';
import { useSurroundings } from '../useSession.ts';
import { NEW, type Picks } from './draft.ts';
import { ScaleFields } from './scaleFields.tsx';

export function BodyPick({ picks }: { readonly picks: Picks }) {
  const { session, start } = useSurroundings();
  const { bodies } = session.kit.value;
  const { bodyName, arrows, faults } = start.draft.value;
  return (
    <>
      {bodies.length > 0 && (
        <Choose
          label="Body"
          options={[...bodies.map(({ id, name }) => ({ value: id, label: name })), { value: NEW, label: 'Add a body\u2026' }]}
          chosen={picks.body?.id ?? NEW}
          onChoose={(body) => start.change({ body, situation: null })}
        />
      )}
      {picks.body === null && (
        <>
          <Field
            label={bodies.length > 0 ? 'Name of the new body' : 'Body'}
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
      )}
    </>
  );
}

const ARROWS = [
  { value: 'absent', label: 'It shows none' },
  { value: 'right-is-up', label: 'Right arrow: go up, towards +' },
  { value: 'right-is-down', label: 'Right arrow: go down, towards \u2212' },
] as const;
