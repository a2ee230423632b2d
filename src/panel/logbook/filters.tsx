// The few ways to narrow the logbook, folded away until they are wanted.
import * as v from 'valibot';
import type { Body } from '../../kit/kit.ts';
import { Temperature } from '../../logbook/conditions.ts';
import type { Show } from '../../logbook/shelf.ts';
import { Choose } from '../parts/choose.tsx';
import { Field } from '../parts/field.tsx';
import { typedNumber } from '../words/typedNumber.ts';

export interface Filter {
  /** Empty: every body. */
  readonly body: string;
  readonly show: Show;
  readonly temperature: string;
}

interface Props {
  readonly bodies: readonly Body[];
  readonly filter: Filter;
  readonly onChange: (filter: Filter) => void;
}

export function Filters({ bodies, filter, onChange }: Props) {
  const inUse = bodies.filter(({ retired }) => retired === null);
  return (
    <details>
      <summary>Filter{filter.show === 'all' && filter.body === '' ? '' : ': on'}</summary>
      <div class="stack">
        <Choose
          label="Body"
          options={[{ value: '', label: 'Every body' }, ...inUse.map(({ id, name }) => ({ value: id, label: name }))]}
          chosen={filter.body}
          onChoose={(body) => onChange({ ...filter, body })}
        />
        <Choose
          label="Show"
          options={SHOWN}
          chosen={filter.show}
          onChoose={(chosen) => onChange({ ...filter, show: SHOWN.find(({ value }) => value === chosen)?.value ?? 'all' })}
        />
        <Field
          label="Temperature now, °C"
          text={filter.temperature}
          hint="Values measured at a far other temperature are then due again."
          numeric
          onTyped={(temperature) => onChange({ ...filter, temperature })}
        />
      </div>
    </details>
  );
}

const SHOWN: readonly { readonly value: Show; readonly label: string }[] = [
  { value: 'all', label: 'All in use' },
  { value: 'due again', label: 'Due again' },
  { value: 'never measured', label: 'Never measured' },
  { value: 'not entered', label: 'Measured, not entered' },
  { value: 'retired', label: 'Retired' },
];

export function temperatureTyped(text: string): Temperature | null {
  const read = v.safeParse(Temperature, typedNumber(text));
  return read.success ? read.output : null;
}
