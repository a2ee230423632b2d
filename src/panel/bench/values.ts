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
import { Ev, readCount, readNumber, writeNumber, type FNumber } from '../../optics/quantity.ts';
import { CircleOfConfusion } from '../../optics/sensor.ts';
import { StepWorth } from '../../optics/stepWorth.ts';
import { inUnit, type DistanceUnit } from '../../optics/writtenLength.ts';
import { answered, cannot, type Answer } from '../../result.ts';
import type { Millimetres, Seconds } from '../../units.ts';

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

type Reader<Value> = (text: string, unit: DistanceUnit) => Answer<Value, BenchFault>;

const length = (least: number, most: number, otherwise: PlainFault) =>
  v.pipe(v.number(otherwise), v.minValue(least, otherwise), v.maxValue(most, otherwise), v.brand('Millimetres'));
const Area = length(0.2, 30, plain('no area'));
const Reach = length(1, 1000, plain('no reach'));

const fitting =
  <Value>(schema: v.GenericSchema<unknown, Value>): Reader<Value> =>
  (text) =>
    fits(schema, readNumber(text));
const readAs =
  (read: (text: string) => number | null, otherwise: BenchFault): Reader<number> =>
  (text) => {
    const value = read(text);
    return value === null ? cannot(otherwise) : answered(value);
  };
const number = (otherwise: PlainFault): Reader<number> => readAs(readNumber, { is: otherwise });
const count = (otherwise: PlainFault): Reader<number> => readAs(readCount, { is: otherwise });

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
  printed: readAs(readNumber, { is: 'print misread', drawn: SCALE }),
  iso: readIsoSpeed,
  metered: readAperture,
  shutter: readShutter,
  fine: fitting(Ev),
  plenty: fitting(Ev),
  mirror: number('no reflection'),
  spot: number('no spot'),
  left: count('no sides'),
  right: count('no sides'),
  top: count('no sides'),
  bottom: count('no sides'),
  width: number('no rectangle'),
  height: number('no rectangle'),
  old: number('no stored correction'),
  celsius: number('no temperature'),
  rampReading: number('no ramp line'),
  rampFace: number('no ramp length'),
  rampSetBack: number('no set-back'),
  share: (text) => fits(FrontShare, (readNumber(text) ?? Number.NaN) / 100),
};

/** Those whose text depends on the unit in use. */
export const IN_UNIT = ['distance', 'closest'] as const satisfies readonly Quantity[];

/** A value that nobody typed, as its field would have it typed. */
export function writtenFor(name: Quantity, value: number, unit: DistanceUnit): string {
  if (!IN_UNIT.some((one) => one === name)) return writeNumber(value, 3);
  const inTheUnit = inUnit(value, unit);
  return `${writeNumber(inTheUnit, inTheUnit < 10 ? 2 : inTheUnit < 100 ? 1 : 0)} ${unit}`;
}
