// A length as a person writes it, with or without its unit: "4.25 m", "4,25", "175 cm", "1,750 mm", "5.74 ft", "5 ft 9 in",
// `5' 9"`, "1 m 75"; its unit in any language of the panel. One foot is 304.8 mm exactly (international yard and pound agreement, 1959). A comma before exactly three
// digits may part thousands or begin the decimals: then both lengths are given, and the caller's range says which can be meant.
import { halfWidth, numbersIn } from './writtenNumber.ts';

const MILLIMETRES_IN = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 } as const;
export type LengthUnit = keyof typeof MILLIMETRES_IN;
/** What distances are written in, unless another unit is said. */
export type DistanceUnit = 'm' | 'ft';

/** A number with its unit, as it is typed. */
export interface WrittenMeasure {
  readonly value: number;
  readonly unit: LengthUnit;
}

/** One way to read what was written: its parts, the largest unit first, and the millimetres of all. */
export interface LengthRead extends WrittenMeasure {
  readonly parts: readonly WrittenMeasure[];
  readonly millimetres: number;
}

export const inUnit = (millimetres: number, unit: LengthUnit): number => millimetres / MILLIMETRES_IN[unit];

const SPELLINGS: readonly (readonly [LengthUnit, string])[] = [
  ['mm', 'mm|millimet(?:re|er)s?|millimètres?|mil[ií]metros?|ミリ(?:メートル)?'],
  ['cm', 'cm|centimet(?:re|er)s?|zentimeter|centimètres?|cent[ií]metros?|センチ(?:メートル)?'],
  ['m', 'm|met(?:re|er)s?|mètres?|metros?|メートル'],
  ['ft', "ft\\.?|foot|feet|'|fu(?:ß|ss)|pi\\.?|pieds?|pies?|フィート"],
  ['in', 'in\\.?|inch(?:es)?|"|zoll|po\\.?|pouces?|pulg\\.?|pulgadas?|インチ'],
];
const UNIT = SPELLINGS.map(([, spelling]) => spelling).join('|');
const NUMBER = '\\d[\\d.,]*(?: \\d{3}(?!\\d)[\\d.,]*)*|[.,]\\d+';
const WHOLE = new RegExp(`^(${NUMBER}) ?(${UNIT})?(?: ?(${NUMBER}) ?(${UNIT})?)?$`);
/** What follows a unit where it is not said. */
const SMALLER: Partial<Record<LengthUnit, LengthUnit>> = { ft: 'in', m: 'cm', cm: 'mm' };

/** Every length the text can mean, the decimal comma first; none where it is no length. `unsaid`: the unit of a bare number. */
export function lengthsIn(text: string, unsaid: LengthUnit): readonly LengthRead[] {
  const [, number = '', said, more, moreSaid] = WHOLE.exec(tidy(text)) ?? [];
  if (number === '' || (more !== undefined && said === undefined)) return [];
  const unit = said === undefined ? unsaid : unitOf(said);
  if (more === undefined) return numbersIn(number).map((value) => single(value, unit));
  const small = moreSaid === undefined ? SMALLER[unit] : unitOf(moreSaid);
  if (small === undefined || MILLIMETRES_IN[small] >= MILLIMETRES_IN[unit]) return [];
  return numbersIn(number).flatMap((value) =>
    numbersIn(more).map((rest) => {
      const [large, little] = [single(value, unit), single(rest, small)];
      return { ...large, parts: [...large.parts, ...little.parts], millimetres: large.millimetres + little.millimetres };
    }),
  );
}

const single = (value: number, unit: LengthUnit): LengthRead => ({
  parts: [{ value, unit }],
  value,
  unit,
  millimetres: value * MILLIMETRES_IN[unit],
});

/** Small letters of half width, one kind of blank, one sign each for feet and inches. */
const tidy = (text: string): string =>
  halfWidth(text)
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/[\u2032\u2019]/g, "'")
    .replace(/[\u2033\u201d]|''/g, '"');

const unitOf = (spelt: string): LengthUnit => SPELLINGS.find(([, spelling]) => new RegExp(`^(?:${spelling})$`).test(spelt))?.[0] ?? 'mm';
