// The few ways to narrow the logbook, folded away until they are wanted.
import * as v from 'valibot';
import type { Body } from '../../kit/kit.ts';
import { Temperature } from '../../logbook/conditions.ts';
import type { Show } from '../../logbook/shelf.ts';
import { Choose } from '../parts/choose.tsx';
import { Field } from '../parts/field.tsx';
import { words } from '../../words/catalogue.ts';
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
  const say = words('logbook').filter;
  const inUse = bodies.filter(({ retired }) => retired === null);
  return (
    <details>
      <summary>{say.open(filter.show !== 'all' || filter.body !== '')}</summary>
      <div class="stack">
        <Choose
          label={say.body}
          options={[{ value: '', label: say.everyBody }, ...inUse.map(({ id, name }) => ({ value: id, label: name }))]}
          chosen={filter.body}
          onChoose={(body) => onChange({ ...filter, body })}
        />
        <Choose
          label={say.show}
          options={SHOWN.map((value) => ({ value, label: say.is[value] }))}
          chosen={filter.show}
          onChoose={(chosen) => onChange({ ...filter, show: SHOWN.find((value) => value === chosen) ?? 'all' })}
        />
        <Field
          label={say.temperature.label}
          text={filter.temperature}
          hint={say.temperature.hint}
          numeric
          onTyped={(temperature) => onChange({ ...filter, temperature })}
        />
      </div>
    </details>
  );
}

const SHOWN: readonly Show[] = ['all', 'due again', 'never measured', 'not entered', 'retired'];

export function temperatureTyped(text: string): Temperature | null {
  const read = v.safeParse(Temperature, typedNumber(text));
  return read.success ? read.output : null;
}
