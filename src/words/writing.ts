// Numbers, dates, lists and plurals as a language writes them. The only user of Intl, so that no sentence mixes the
// browser's language with its own. Formatters are made when first wanted: making one takes longer than using it.
import { inUnit, type DistanceUnit, type LengthUnit, type WrittenMeasure } from '../optics/writtenLength.ts';
import type { Millimetres, Moment, Seconds } from '../units.ts';
import { countryInUse } from './countryInUse.ts';

/** The units that quantities are written in, by their names in Intl (ECMA-402, sanctioned single units). */
type Unit = 'meter' | 'centimeter' | 'millimeter' | 'foot' | 'inch' | 'second' | 'minute' | 'hour' | 'day' | 'month' | 'celsius';

/** The words of a plural: `other` is there in every language. */
type Forms = Partial<Record<Intl.LDMLPluralRule, string>> & { readonly other: string };

export interface Write {
  /** With at most so many digits after the point, none that say nothing: 4.25, 1,200, −3. */
  number(value: number, digits?: number): string;
  /** The same with its sign: +2, −0.5, and 0 without one. */
  signed(value: number, digits?: number): string;
  /** A share in per cent, rounded down and never all: there is always a doubt left. */
  chance(share: number): string;
  percent(share: number, digits?: number): string;
  /** Never in two lines. 1000 ft without a comma: typed as it is written, it must not be taken for 1 ft. */
  unit(value: number, unit: Unit, digits?: number): string;
  /** How far off something stands, in what is usual in the person's country unless told otherwise; hundredths below ten, tenths below a hundred. */
  distance(length: Millimetres, unit?: DistanceUnit): string;
  /** Two of them, as fine as it takes to tell them apart; only one where a tenth of a millimetre does not. */
  distances(near: Millimetres, far: Millimetres, unit: DistanceUnit): readonly string[];
  /** The same where it may be a hair: millimetres below a metre. */
  nearby(length: Millimetres, unit: DistanceUnit): string;
  millimetres(length: Millimetres): string;
  /** As it would be typed so that it can mean nothing else: without thousands, and never with just three digits after a comma. */
  typed(value: number): string;
  typedLength(parts: readonly WrittenMeasure[]): string;
  /** 2.5°. */
  degrees(angle: number, digits: number): string;
  /** "40 secs", "2 mins 5 secs", "1 hr 10 mins". */
  duration(time: Seconds): string;
  /** 28 Nov 2026, never in two lines. */
  day(when: Moment): string;
  dayAndTime(when: Moment): string;
  /** "March", "March 2026". */
  month(when: Moment): string;
  monthAndYear(when: Moment): string;
  /** To the second, where two may lie close together. */
  dayAndSecond(when: Moment): string;
  /** "a, b and c". */
  list(items: readonly string[]): string;
  choice(items: readonly string[]): string;
  /** The form for this count, with `#` standing for the number: `{ one: '# hold', other: '# holds' }`. */
  count(count: number, forms: Forms, digits?: number): string;
}

const NAMED: Readonly<Record<LengthUnit, Unit>> = { mm: 'millimeter', cm: 'centimeter', m: 'meter', ft: 'foot', in: 'inch' };

/** Digits after the point of a metre or a foot that still say something. */
const FINEST = 4;

/** Digits after the point: centimetres matter below ten, not above a hundred. */
export const lengthDigits = (value: number): number => (value < 10 ? 2 : value < 100 ? 1 : 0);

const AS_TYPED = { maximumFractionDigits: 9, useGrouping: false } as const;
const DAY = { day: 'numeric', month: 'short', year: 'numeric' } as const;

export function writing(language: string): Write {
  const numbers = made((options: Intl.NumberFormatOptions) => new Intl.NumberFormat(language, options));
  const dates = made((options: Intl.DateTimeFormatOptions) => new Intl.DateTimeFormat(language, options));
  const lists = made((options: Intl.ListFormatOptions) => new Intl.ListFormat(language, options));
  const plurals = made((options: Intl.PluralRulesOptions) => new Intl.PluralRules(language, options));

  /** A true minus, also where a language's own data has a hyphen. */
  const format = (value: number, options: Intl.NumberFormatOptions): string =>
    numbers(options)
      .format(Object.is(value, -0) ? 0 : value)
      .replace('-', '\u2212');
  const number = (value: number, digits = 0): string => format(value, { maximumFractionDigits: digits });
  const inUnits = (value: number, name: Unit, options: Intl.NumberFormatOptions): string =>
    format(value, { style: 'unit', unit: name, unitDisplay: 'short', ...options }).replaceAll(' ', '\u00a0');
  const unit = (value: number, name: Unit, digits = 0): string => inUnits(value, name, { maximumFractionDigits: digits, useGrouping: 'min2' });
  const distance = (length: Millimetres, name: DistanceUnit = countryInUse.value.unit, digits?: number): string => {
    const value = inUnit(length, name);
    return unit(value, NAMED[name], digits ?? lengthDigits(value));
  };
  const distances = (near: Millimetres, far: Millimetres, name: DistanceUnit): readonly string[] => {
    let [one, other] = [distance(near, name), distance(far, name)];
    for (let digits = lengthDigits(inUnit(near, name)); one === other && digits < FINEST;) {
      digits += 1;
      [one, other] = [distance(near, name, digits), distance(far, name, digits)];
    }
    return one === other ? [distance(near, name)] : [one, other];
  };
  const plainly = (written: string): string => written.replace(/(?<!\d)[1-9]\d{0,2},\d{3}(?!\d)/u, '$&0');
  const day = (when: Moment): string => dates(DAY).format(when).replaceAll(' ', '\u00a0');
  const dayAnd = (when: Moment, time: Intl.DateTimeFormatOptions): string =>
    dates({ ...DAY, ...time })
      .format(when)
      .replace(dates(DAY).format(when), day(when));
  const percent = (share: number, digits = 0): string => format(share, { style: 'percent', maximumFractionDigits: digits });

  return {
    number,
    unit,
    percent,
    signed: (value, digits = 0) => format(value, { maximumFractionDigits: digits, signDisplay: 'exceptZero' }),
    chance: (share) => percent(Math.min(99, Math.floor(share * 100)) / 100),
    distance: (length, name) => distance(length, name),
    distances,
    nearby: (length, name) => (length >= 1000 ? distance(length, name) : unit(length, 'millimeter', lengthDigits(length))),
    millimetres: (length) => unit(length, 'millimeter'),
    typed: (value) => plainly(format(value, AS_TYPED)),
    typedLength: (parts) => parts.map((part) => plainly(inUnits(part.value, NAMED[part.unit], AS_TYPED))).join(' '),
    degrees: (angle, digits) => `${number(angle, digits)}\u00b0`,
    duration: (time) =>
      durationOf(time)
        .map(([value, name]) => unit(value, name))
        .join(' '),
    day,
    dayAndTime: (when) => dayAnd(when, { hour: 'numeric', minute: '2-digit' }),
    month: (when) => dates({ month: 'long', timeZone: 'UTC' }).format(when),
    monthAndYear: (when) => dates({ month: 'long', year: 'numeric', timeZone: 'UTC' }).format(when),
    dayAndSecond: (when) => dayAnd(when, { hour: 'numeric', minute: '2-digit', second: '2-digit' }),
    list: (items) => lists({ type: 'conjunction' }).format(items),
    choice: (items) => lists({ type: 'disjunction' }).format(items),
    // The form goes by what is written: 1.04 to a tenth is "1".
    count: (count, forms, digits = 0) =>
      (forms[plurals({ maximumFractionDigits: digits }).select(count)] ?? forms.other).replaceAll('#', number(count, digits)),
  };
}

/** The two largest parts of a time that say something. */
function durationOf(time: Seconds): (readonly [number, Unit])[] {
  const whole = Math.round(time);
  if (whole < 60) return [[whole, 'second']];
  if (whole < 3600)
    return [
      [Math.floor(whole / 60), 'minute'],
      [whole % 60, 'second'],
    ];
  return [
    [Math.floor(whole / 3600), 'hour'],
    [Math.floor((whole % 3600) / 60), 'minute'],
  ];
}

function made<Options extends object, Formatter>(make: (options: Options) => Formatter): (options: Options) => Formatter {
  const kept = new Map<string, Formatter>();
  return (options) => {
    const key = JSON.stringify(options);
    const known = kept.get(key) ?? make(options);
    kept.set(key, known);
    return known;
  };
}
