// From what was typed at the bench to the rig and everything that follows from it; one fault for each field that does
// not fit, and the rest goes on being shown.
import * as v from 'valibot';
import { answered, cannot, type Answer } from '../../result.ts';
import { plain, type BenchFault, type PlainFault } from '../../optics/fault.ts';
import { fits } from '../../optics/fits.ts';
import { benchOf, type Bench, type Rig } from '../../optics/bench.ts';
import { ConverterFactor, apertureWith, focalLengthWith } from '../../optics/converter.ts';
import { readAperture } from '../../optics/exposure.ts';
import { readDistance } from '../../optics/length.ts';
import { fromFilmPlane, measuredMagnification } from '../../optics/magnification.ts';
import { readCount, readNumber } from '../../optics/quantity.ts';
import { ConfusionRule, pixelPitch, readSensor } from '../../optics/sensor.ts';
import type { DistanceUnit } from '../../optics/writtenLength.ts';
import { StepWorth } from '../../optics/stepWorth.ts';
import { SCALE } from '../../optics/print/target.ts';
import { checkPrint, printed, TRUE_SIZE, type PrintCheck } from '../../optics/print/printCheck.ts';
import { millimetres, type Millimetres } from '../../units.ts';
import type { BenchSubject } from './subject.ts';
import type { BenchField, Typed } from './untyped.ts';

export type BenchFaults = Readonly<Partial<Record<BenchField, BenchFault>>>;

export interface Reckoned {
  readonly faults: BenchFaults;
  readonly unit: DistanceUnit;
  /** From the film plane, as measured or else as the situation has it. */
  readonly distance: Millimetres;
  /** From the film-plane mark to the front of the lens, where the distance is measured from there; 0 otherwise. */
  readonly reach: Millimetres;
  /** That of lens and converter together. */
  readonly focalLength: Millimetres;
  readonly converter: ConverterFactor | null;
  readonly closest: Millimetres | null;
  readonly print: PrintCheck | null;
  /** Null while a field that it needs is empty or does not fit. */
  readonly rig: Rig | null;
  readonly bench: Answer<Bench, BenchFault> | null;
}

const NO_AREA = plain('no area');
const Area = v.pipe(v.number(NO_AREA), v.minValue(0.2, NO_AREA), v.maxValue(30, NO_AREA));
const NO_REACH = plain('no reach');
const Reach = v.pipe(v.number(NO_REACH), v.minValue(1, NO_REACH), v.maxValue(1000, NO_REACH));

export function reckon(typed: Typed, subject: BenchSubject): Reckoned {
  const faults: Partial<Record<BenchField, BenchFault>> = {};
  const unit: DistanceUnit = typed.unit === 'ft' ? 'ft' : 'm';
  /** The value of a field; null with its fault noted, or without one where it is empty. */
  function read<T>(field: BenchField, reading: (text: string) => Answer<T, BenchFault>): T | null {
    if (typed[field].trim() === '') return null;
    const value = reading(typed[field]);
    if (!value.ok) faults[field] = value.fault;
    return value.ok ? value.value : null;
  }
  const number = (text: string): number | null => readNumber(text);

  const factor = read('converter', (text) => fits(ConverterFactor, number(text)));
  const focalLength = factor === null ? subject.focalLength : focalLengthWith(factor, subject.focalLength);
  const shown = read('aperture', readAperture);
  const aperture = shown !== null && factor !== null ? apertureWith(factor, shown) : shown;
  const closest = read('closest', (text) => readDistance(text, unit));
  const reach = reachTyped();
  const distance = distanceFrom();
  const sensor = readSensor(typed.sensor);
  const pitch = read('pixels', (text) => pixelPitch(sensor, readCount(text) ?? Number.NaN));
  const area = read('area', (text) => fits(Area, number(text)));
  const worth = read('worth', (text) => fits(StepWorth, number(text)));
  const rule = fits(ConfusionRule, typed.confusion === 'own' ? { by: 'own', diameter: number(typed.ownConfusion) } : { by: typed.confusion });
  if (!rule.ok) faults.ownConfusion = rule.fault;
  const print = read('printed', (text) => checkPrint(SCALE, millimetres(number(text) ?? Number.NaN)));
  const scale = printed(SCALE, print?.factor ?? TRUE_SIZE);
  const measured = pitch === null ? null : read('scalePixels', (text) => measuredMagnification(scale, readCount(text) ?? Number.NaN, pitch));

  const complete = aperture !== null && pitch !== null && area !== null && worth !== null && rule.ok && !faults.converter;
  const rig: Rig | null = complete
    ? {
        focalLength,
        aperture,
        distance: { from: 'film plane', distance },
        measured,
        sensor,
        pitch,
        confusionRule: rule.value,
        area: millimetres(area),
        worth,
      }
    : null;
  return { faults, unit, distance, reach, focalLength, converter: factor, closest, print, rig, bench: rig && benchOf(rig) };

  function reachTyped(): Millimetres {
    if (typed.from === 'film plane') return millimetres(0);
    const length = read('reach', (text) => fits(Reach, number(text)));
    if (length === null) faults.reach ??= { is: NO_REACH };
    return millimetres(length ?? 0);
  }

  function distanceFrom(): Millimetres {
    const measuredDistance = read('distance', (text) => readDistance(text, unit));
    if (measuredDistance === null) return subject.distance;
    return fromFilmPlane({ from: typed.from === 'film plane' ? 'film plane' : 'front of lens', distance: measuredDistance }, reach);
  }
}

/** Needed here, though the rig may do without: an empty field is a fault of its own. */
export const needed = <T>(text: string, otherwise: PlainFault, reading: (text: string) => Answer<T, BenchFault>): Answer<T, BenchFault> =>
  text.trim() === '' ? cannot({ is: otherwise }) : reading(text);

export const numberTyped = (text: string, otherwise: PlainFault): Answer<number, BenchFault> => {
  const value = readNumber(text);
  return value === null ? cannot({ is: otherwise }) : answered(value);
};
