// A field and a list of the bench, over what was typed there.
import { words } from '../../words/catalogue.ts';
import { Choose } from '../parts/choose.tsx';
import { Field } from '../parts/field.tsx';
import { useSurroundings } from '../useSession.ts';
import type { BenchFaults } from './reckon.ts';
import { typeInto, typedAt } from './fields.ts';
import type { BenchField } from './untyped.ts';

interface Props {
  readonly field: BenchField;
  /** Where it is called otherwise than on the bench. */
  readonly label?: string;
  readonly hint?: string;
  readonly faults?: BenchFaults;
}

export function Typing({ field, label, hint, faults = {} }: Props) {
  const { bench } = useSurroundings();
  const say = words('bench');
  const fault = faults[field];
  const below = hint ?? say.hint[field];
  return (
    <Field
      label={label ?? say.field[field]}
      text={typedAt(bench)[field]}
      fault={fault && say.fault(fault)}
      {...(below !== undefined && { hint: below })}
      onTyped={(text) => typeInto(bench, { [field]: text })}
    />
  );
}

interface Choices {
  readonly field: BenchField;
  /** What can be chosen, in words. */
  readonly from: Readonly<Record<string, string>>;
}

export function Choosing({ field, from }: Choices) {
  const { bench } = useSurroundings();
  const options = Object.entries(from).map(([value, label]) => ({ value, label }));
  return <Choose label={words('bench').field[field]} options={options} chosen={typedAt(bench)[field]} onChoose={(value) => typeInto(bench, { [field]: value })} />;
}
