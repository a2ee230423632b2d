// Every quantity that can be entered at the bench, and how its text is read. It is read once, when it is typed, in the unit
// of that moment: from then on its value counts, and another unit only writes it anew.
import * as v from 'valibot';
import { ConverterFactor } from '../../optics/converter.ts';
import { readAperture, readIsoSpeed, readShutter } from '../../optics/exposure.ts';
import { plain, type BenchFault, type PlainFault } from '../../optics/fault.ts';
import { fits } from '../../optics/fits.ts';
import { readDistance } from '../../optics/length.ts';
import { FrontShare } from '../../optics/placement.ts';
import { SCALE } from '../../optics/print/target.ts';
import { readLikely, readWithin } from '../../optics/meantNumber.ts';
import { Ev, readCount, type FNumber } from '../../optics/quantity.ts';
import { CircleOfConfusion } from '../../optics/sensor.ts';
import { StepWorth } from '../../optics/stepWorth.ts';
import { inUnit, type DistanceUnit } from '../../optics/writtenLength.ts';
import { failed, got, type Result } from '../../result.ts';
import type { Millimetres, Seconds } from '../../units.ts';
import { numberTyped } from '../words/numberTyped.ts';

export interface BenchValues {
  readonly distance: Millimetres;
  readonly reach: Millimetres;
  readonly closest: Millimetres;
  readonly aperture: FNumber;
  readonly converter: ConverterFactor;
  readonly pixels: number;
  readonly area: Millimetres;
  readonly ownConfusion: Millimetres;
  readonly worth: StepWorth;
  readonly scalePixels: number;
  readonly printed: number;
  readonly iso: number;
  readonly metered: FNumber;
  readonly shutter: Seconds;
  readonly fine: Ev;
  readonly plenty: Ev;
  readonly mirror: number;
  readonly spot: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
  readonly old: number;
  readonly celsius: number;
  readonly rampReading: number;
  readonly rampFace: number;
  readonly rampSetBack: number;
  readonly share: FrontShare;
}
export type Quantity = keyof BenchValues;

type Reader<Value> = (text: string, unit: DistanceUnit) => Result<Value, BenchFault>;

const length = (least: number, most: number, otherwise: PlainFault) =>
  v.pipe(v.number(otherwise), v.minValue(least, otherwise), v.maxValue(most, otherwise), v.brand('Millimetres'));
const Area = length(0.2, 30, plain('no area'));
const Reach = length(1, 1000, plain('no reach'));

const fitting =
  <Value>(schema: v.GenericSchema<unknown, Value>): Reader<Value> =>
  (text) =>
    readWithin(schema, text);

/** A number that is judged with others later on; "1,000" is taken for what lies between these, which refuse nothing. */
const likely = (least: number, most: number, otherwise: BenchFault): Reader<number> => {
  const between = v.pipe(v.number(), v.minValue(least), v.maxValue(most));
  return (text) => readLikely(between, text, otherwise);
};
const count =
  (otherwise: PlainFault): Reader<number> =>
  (text) => {
    const value = readCount(text);
    return value === null ? failed({ is: otherwise }) : got(value);
  };
const Percent = v.pipe(v.number(plain('no share')), v.minValue(0, plain('no share')), v.maxValue(100, plain('no share')));

export const READ: { readonly [Name in Quantity]: Reader<BenchValues[Name]> } = {
  distance: readDistance,
  reach: fitting(Reach),
  closest: readDistance,
  aperture: readAperture,
  converter: fitting(ConverterFactor),
  pixels: count('no width of a photograph'),
  area: fitting(Area),
  ownConfusion: fitting(CircleOfConfusion),
  worth: fitting(StepWorth),
  scalePixels: count('no pixels spanned'),
  printed: likely(SCALE / 2, SCALE * 2, { is: 'print misread', drawn: SCALE }),
  iso: readIsoSpeed,
  metered: readAperture,
  shutter: readShutter,
  fine: fitting(Ev),
  plenty: fitting(Ev),
  mirror: likely(2, 100_000, { is: 'no reflection' }),
  spot: likely(0, 10_000, { is: 'no spot' }),
  left: count('no sides'),
  right: count('no sides'),
  top: count('no sides'),
  bottom: count('no sides'),
  width: likely(5, 10_000, { is: 'no rectangle' }),
  height: likely(5, 10_000, { is: 'no rectangle' }),
  old: likely(-100, 100, { is: 'no stored correction' }),
  celsius: likely(-50, 60, { is: 'no temperature' }),
  rampReading: likely(-1000, 1000, { is: 'no ramp line' }),
  rampFace: likely(20, 2000, { is: 'no ramp length' }),
  rampSetBack: likely(2, 2000, { is: 'no set-back' }),
  share: (text) => {
    const percent = readWithin(Percent, text);
    return percent.ok ? fits(FrontShare, percent.value / 100) : percent;
  },
};

/** Those whose text depends on the unit in use. */
export const IN_UNIT = ['distance', 'closest'] as const satisfies readonly Quantity[];

/** A value that nobody typed, as its field would have it typed. */
export function writtenFor(name: Quantity, value: number, unit: DistanceUnit): string {
  if (!IN_UNIT.some((one) => one === name)) return numberTyped(value, 3);
  const inTheUnit = inUnit(value, unit);
  return `${numberTyped(inTheUnit, inTheUnit < 10 ? 2 : inTheUnit < 100 ? 1 : 0)} ${unit}`;
}
