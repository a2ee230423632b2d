// A field and a list of the bench, over what was entered and picked there.
import { words } from '../../words/catalogue.ts';
import { Choose } from '../parts/choose.tsx';
import { Field } from '../parts/field.tsx';
import { useSurroundings } from '../useSession.ts';
import type { BenchFaults } from './reckon.ts';
import { enteredAt, pickIn, typeInto } from './fields.ts';
import type { Picks } from './untyped.ts';
import type { Quantity } from './values.ts';

interface Props {
  readonly field: Quantity;
  /** Where it is called otherwise than on the bench. */
  readonly label?: string;
  readonly hint?: string;
  readonly faults?: BenchFaults;
  /** As for a field. */
  readonly faultAt?: string;
  readonly placeholder?: string;
}

export function Typing({ field, label, hint, faults = {}, ...rest }: Props) {
  const { bench } = useSurroundings();
  const say = words('bench');
  const fault = faults[field];
  const below = hint ?? say.hint[field];
  return (
    <Field
      label={label ?? say.field[field]}
      text={enteredAt(bench)[field]?.text ?? ''}
      fault={fault && say.fault(fault)}
      {...(below !== undefined && { hint: below })}
      {...rest}
      onTyped={(text) => typeInto(bench, field, text)}
    />
  );
}

interface Choices<Name extends keyof Picks> {
  readonly field: Name;
  /** What can be picked, in words. */
  readonly from: Readonly<Record<Picks[Name], string>>;
}

export function Choosing<Name extends keyof Picks>({ field, from }: Choices<Name>) {
  const { bench } = useSurroundings();
  const options = (Object.keys(from) as Picks[Name][]).map((value) => ({ value, label: from[value] }));
  const choose = (chosen: string): void => {
    const option = options.find(({ value }) => value === chosen);
    if (option) pickIn(bench, { [field]: option.value });
  };
  return <Choose label={words('bench').field[field]} options={options} chosen={enteredAt(bench).picks[field]} onChoose={choose} />;
}
