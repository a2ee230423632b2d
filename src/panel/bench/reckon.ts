// From what was typed at the bench to the rig and everything that follows from it; one sentence for each field that does
// not fit, and the rest goes on being shown.
import * as v from 'valibot';
import { failed, got, type Result } from '../../result.ts';
import { fits } from '../../optics/fits.ts';
import { benchOf, type Bench, type Rig } from '../../optics/bench.ts';
import { ConverterFactor, apertureWith, focalLengthWith } from '../../optics/converter.ts';
import { readAperture } from '../../optics/exposure.ts';
import { readDistance, type DistanceUnit } from '../../optics/length.ts';
import { fromFilmPlane, measuredMagnification } from '../../optics/magnification.ts';
import { readCount, readNumber } from '../../optics/quantity.ts';
import { ConfusionRule, pixelPitch, readSensor } from '../../optics/sensor.ts';
import { StepWorth } from '../../optics/stepWorth.ts';
import { checkPrint, printed, TRUE_SIZE, type PrintCheck } from '../../optics/print/printCheck.ts';
import { millimetres, type Millimetres } from '../../units.ts';
import type { BenchSubject } from './subject.ts';
import type { BenchField, Typed } from './untyped.ts';

/** The target's scale, as it is drawn. */
export const SCALE: Millimetres = millimetres(100);

export type BenchFaults = Readonly<Partial<Record<BenchField, string>>>;

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
  readonly bench: Result<Bench> | null;
}

const AREA = 'Enter the size of the AF area on the sensor in millimetres, from 0.2 to 30: 2.5 is usual.';
const Area = v.pipe(v.number(AREA), v.minValue(0.2, AREA), v.maxValue(30, AREA));
const REACH = 'Enter how far the front of the lens stands before the film-plane mark in millimetres, from 1 to 1000.';
const Reach = v.pipe(v.number(REACH), v.minValue(1, REACH), v.maxValue(1000, REACH));

export function reckon(typed: Typed, subject: BenchSubject): Reckoned {
  const faults: Partial<Record<BenchField, string>> = {};
  const unit: DistanceUnit = typed.unit === 'ft' ? 'ft' : 'm';
  /** The value of a field; null with its fault noted, or without one where it is empty. */
  function read<T>(field: BenchField, reading: (text: string) => Result<T>): T | null {
    if (typed[field].trim() === '') return null;
    const value = reading(typed[field]);
    if (!value.ok) faults[field] = value.sentence;
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
  if (!rule.ok) faults.ownConfusion = rule.sentence;
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
    if (length === null) faults.reach ??= REACH;
    return millimetres(length ?? 0);
  }

  function distanceFrom(): Millimetres {
    const measuredDistance = read('distance', (text) => readDistance(text, unit));
    if (measuredDistance === null) return subject.distance;
    return fromFilmPlane({ from: typed.from === 'film plane' ? 'film plane' : 'front of lens', distance: measuredDistance }, reach);
  }
}

/** Needed here, though the rig may do without: an empty field is a fault of its own. */
export const needed = <T>(text: string, sentence: string, reading: (text: string) => Result<T>): Result<T> =>
  text.trim() === '' ? failed(sentence) : reading(text);

export const numberTyped = (text: string, sentence: string): Result<number> => {
  const value = readNumber(text);
  return value === null ? failed(sentence) : got(value);
};
