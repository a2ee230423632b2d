// A field and a list of the bench, over what was typed there.
import { Choose } from '../parts/choose.tsx';
import { Field } from '../parts/field.tsx';
import type { Option } from '../parts/pick.tsx';
import { useSurroundings } from '../useSession.ts';
import type { BenchFaults } from './reckon.ts';
import { typeInto, typedAt } from './fields.ts';
import type { BenchField } from './untyped.ts';

interface Props {
  readonly field: BenchField;
  readonly label: string;
  readonly hint?: string;
  readonly faults?: BenchFaults;
}

export function Typing({ field, label, hint, faults = {} }: Props) {
  const { bench } = useSurroundings();
  return (
    <Field
      label={label}
      text={typedAt(bench)[field]}
      fault={faults[field]}
      {...(hint !== undefined && { hint })}
      onTyped={(text) => typeInto(bench, { [field]: text })}
    />
  );
}

interface Choices {
  readonly field: BenchField;
  readonly label: string;
  readonly options: readonly Option<string>[];
}

export function Choosing({ field, label, options }: Choices) {
  const { bench } = useSurroundings();
  return <Choose label={label} options={options} chosen={typedAt(bench)[field]} onChoose={(value) => typeInto(bench, { [field]: value })} />;
}
