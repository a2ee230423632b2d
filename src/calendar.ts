// Dates without a clock: moments to and from ISO 8601, in UTC, so that what is written to a file reads the same
// everywhere. Days from the civil calendar after H. Hinnant, 'chrono-compatible low-level date algorithms' (2013).
import { moment, type Moment } from './units.ts';

const DAY = 86_400_000;
const LAST_YEAR = 9999;

export interface CivilTime {
  readonly year: number;
  readonly month: number;
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
  readonly second: number;
}

/**
 * The moment of a civil time, `east` minutes ahead of UTC; null when there is no such day or time, or it is before
 * 1970.
 */
export function momentOf(time: CivilTime, east: number, milliseconds = 0): Moment | null {
  const { year, month, day, hour, minute, second } = time;
  if (year < 1969 || year > LAST_YEAR || month < 1 || month > 12 || day < 1 || day > daysIn(year, month)) return null;
  if (hour > 23 || minute > 59 || second > 59) return null;
  const at = daysFromCivil(year, month, day) * DAY + ((hour * 60 + minute - east) * 60 + second) * 1000 + milliseconds;
  return at < 0 ? null : moment(at);
}

/** `2026-03-04T05:06:07Z`, with milliseconds where there are any; the time of day is left out at `day` precision. */
export function isoOf(at: Moment, precision: 'full' | 'day' = 'full'): string {
  const whole = Math.floor(at);
  const { year, month, day } = civilFromDays(Math.floor(whole / DAY));
  const date = `${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}`;
  if (precision === 'day') return date;
  const seconds = Math.floor((whole % DAY) / 1000);
  const rest = whole % 1000;
  const time = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60].map((part) => pad(part, 2)).join(':');
  return `${date}T${time}${rest === 0 ? '' : `.${pad(rest, 3)}`}Z`;
}

const ISO = /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2})(?:\.(\d{1,3})\d*)?)?\s*(Z|[+-]\d{2}:?\d{2})?)?$/;

/** Reads an ISO 8601 date or time; one without a zone is taken as UTC, one without a time as its midnight. */
export function readIso(text: string): Moment | null {
  const found = ISO.exec(text.trim());
  if (!found) return null;
  const part = (index: number) => Number(found[index] ?? 0);
  const time = { year: part(1), month: part(2), day: part(3), hour: part(4), minute: part(5), second: part(6) };
  const milliseconds = Number((found[7] ?? '0').padEnd(3, '0'));
  return momentOf(time, minutesEast(found[8] ?? 'Z') ?? 0, milliseconds);
}

/** Reads a zone such as `+02:00`, in minutes; null for what is none. */
export function minutesEast(zone: string): number | null {
  if (zone === 'Z') return 0;
  const found = /^([+-])(\d{2}):?(\d{2})$/.exec(zone);
  if (!found || Number(found[2]) > 14 || Number(found[3]) > 59) return null;
  return (found[1] === '-' ? -1 : 1) * (Number(found[2]) * 60 + Number(found[3]));
}

const pad = (value: number, width: number): string => String(value).padStart(width, '0');

const leaps = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

function daysIn(year: number, month: number): number {
  if (month === 2) return leaps(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

function daysFromCivil(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  return era * 146_097 + yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear - 719_468;
}

function civilFromDays(days: number): { year: number; month: number; day: number } {
  const z = days + 719_468;
  const era = Math.floor(z / 146_097);
  const dayOfEra = z - era * 146_097;
  const yearOfEra = Math.floor((dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365);
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const shifted = Math.floor((5 * dayOfYear + 2) / 153);
  const month = shifted + (shifted < 10 ? 3 : -9);
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * shifted + 2) / 5) + 1,
  };
}
