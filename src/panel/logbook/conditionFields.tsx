// How it was when a value was measured or entered: every field may stay empty.
import * as v from 'valibot';
import { Conditions } from '../../logbook/conditions.ts';
import { isoOf, readIso } from '../../calendar.ts';
import type { Moment } from '../../units.ts';
import { Field } from '../parts/field.tsx';
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
  temperature: written(conditions?.temperature),
  light: written(conditions?.light),
  firmware: conditions?.firmware ?? '',
  note: conditions?.note ?? '',
});

const written = (value: number | null | undefined): string => (typeof value === 'number' ? String(value).replace('-', '\u2212') : '');

interface Props {
  readonly typed: Circumstances;
  readonly onTyped: (typed: Circumstances) => void;
}

export function ConditionFields(props: Props) {
  return (
    <details>
      <summary>Date, light, temperature, note</summary>
      <div class="stack">
        <CircumstanceFields {...props} dated />
      </div>
    </details>
  );
}

const FIELDS = [
  ['day', 'Date', 'Year, month and day: 2026-03-04.'],
  ['temperature', 'Temperature, °C', ''],
  ['light', 'Light, EV at ISO 100', ''],
  ['firmware', 'Firmware of the body', ''],
  ['note', 'Note', ''],
] as const;

/** `dated`: the day is asked for as well. */
export function CircumstanceFields({ typed, onTyped, dated }: Props & { readonly dated: boolean }) {
  return (
    <>
      {FIELDS.filter(([key]) => dated || key !== 'day').map(([key, label, hint]) => (
        <Field key={key} label={label} text={typed[key]} {...(hint ? { hint } : {})} onTyped={(text) => onTyped({ ...typed, [key]: text })} />
      ))}
    </>
  );
}

export type Told = { readonly ok: true; readonly at: Moment; readonly conditions: Conditions } | { readonly ok: false; readonly sentence: string };

/** Today's date means now; another day, its noon, so that no zone makes it the day before. */
export function circumstancesTold({ day, temperature, light, firmware, note }: Circumstances, now: Moment): Told {
  const noon = readIso(`${day.trim()}T12:00Z`);
  if (noon === null || noon > now + 86_400_000) return { ok: false, sentence: 'Enter the date as year, month and day, not after today: 2026-03-04.' };
  const number = (text: string): number | null => (text.trim() === '' ? null : typedNumber(text));
  const read = v.safeParse(Conditions, {
    told: now,
    temperature: number(temperature),
    light: number(light),
    firmware: firmware.trim() || null,
    note: note.trim() || null,
  });
  if (!read.success) return { ok: false, sentence: read.issues[0].message };
  return { ok: true, at: day.trim() === isoOf(now, 'day') ? now : noon, conditions: read.output };
}
