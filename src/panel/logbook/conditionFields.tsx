// How it was when a value was measured or entered: every field may stay empty.
import * as v from 'valibot';
import { CONDITION_FAULTS, Conditions } from '../../logbook/conditions.ts';
import { isoOf, readIso } from '../../calendar.ts';
import type { Moment } from '../../units.ts';
import { Field } from '../parts/field.tsx';
import { words } from '../../words/catalogue.ts';
import { failed, got, type Result } from '../../result.ts';
import { asText } from '../kit/typedFields.ts';
import { typedNumber } from '../words/typedNumber.ts';

export interface Circumstances {
  readonly day: string;
  readonly temperature: string;
  readonly light: string;
  readonly firmware: string;
  readonly note: string;
}

export const noCircumstances = (now: Moment): Circumstances => circumstancesOf(null, now);

export const circumstancesOf = (conditions: Conditions | null, now: Moment): Circumstances => ({
  day: isoOf(now, 'day'),
  temperature: asText(conditions?.temperature),
  light: asText(conditions?.light),
  firmware: conditions?.firmware ?? '',
  note: conditions?.note ?? '',
});

interface Props {
  readonly typed: Circumstances;
  readonly onTyped: (typed: Circumstances) => void;
}

export function ConditionFields(props: Props) {
  return (
    <details>
      <summary>{words('conditions').open}</summary>
      <div class="stack">
        <CircumstanceFields {...props} dated />
      </div>
    </details>
  );
}

const FIELDS = ['day', 'temperature', 'light', 'firmware', 'note'] as const;

/** `dated`: the day is asked for as well. */
export function CircumstanceFields({ typed, onTyped, dated }: Props & { readonly dated: boolean }) {
  const { fields } = words('conditions');
  return (
    <>
      {FIELDS.filter((key) => dated || key !== 'day').map((key) => (
        <Field key={key} {...fields[key]} text={typed[key]} onTyped={(text) => onTyped({ ...typed, [key]: text })} />
      ))}
    </>
  );
}

export type ConditionsTold = Result<{ readonly at: Moment; readonly conditions: Conditions }>;

/** Today's date means now; another day, its noon, so that no zone makes it the day before. */
export function circumstancesTold({ day, temperature, light, firmware, note }: Circumstances, now: Moment): ConditionsTold {
  const { fault } = words('conditions');
  const noon = readIso(`${day.trim()}T12:00Z`);
  if (noon === null || noon > now + 86_400_000) return failed(fault['no day']);
  const number = (text: string): number | null => (text.trim() === '' ? null : typedNumber(text));
  const read = v.safeParse(Conditions, {
    told: now,
    temperature: number(temperature),
    light: number(light),
    firmware: firmware.trim() || null,
    note: note.trim() || null,
  });
  if (!read.success) {
    const [{ message }] = read.issues;
    return failed(fault[CONDITION_FAULTS.find((one) => one === message) ?? 'does not fit']);
  }
  return got({ at: day.trim() === isoOf(now, 'day') ? now : noon, conditions: read.output });
}
