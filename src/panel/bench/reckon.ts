// From what was entered at the bench to the rig and everything that follows from it; one fault for each field that does
// not fit, and the rest goes on being shown.
import { failed, type Result } from '../../result.ts';
import type { BenchFault, PlainFault } from '../../optics/fault.ts';
import { benchOf, type Bench, type Rig } from '../../optics/bench.ts';
import { apertureWith, focalLengthWith, type ConverterFactor } from '../../optics/converter.ts';
import { fromFilmPlane, measuredMagnification } from '../../optics/magnification.ts';
import { pixelPitch, readSensor, type ConfusionRule } from '../../optics/sensor.ts';
import type { DistanceUnit } from '../../optics/writtenLength.ts';
import { SCALE } from '../../optics/print/target.ts';
import { checkPrint, printed, TRUE_SIZE, type PrintCheck } from '../../optics/print/printCheck.ts';
import { millimetres, type Millimetres } from '../../units.ts';
import type { BenchEntries, BenchEntry } from './entry.ts';
import type { Entered } from './fields.ts';
import type { BenchSubject } from './subject.ts';
import type { Quantity, BenchValues } from './values.ts';

export type BenchFaults = Readonly<Partial<Record<Quantity, BenchFault>>>;

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
  readonly bench: Result<Bench, BenchFault> | null;
}

export function reckon(entered: Entered, subject: BenchSubject): Reckoned {
  const faults: Partial<Record<Quantity, BenchFault>> = {};
  const { unit, from, confusion, sensor: size } = entered.picks;
  const entries: BenchEntries = entered;
  /** The value, or null with its fault noted. */
  function noted<Value>(field: Quantity, answer: Result<Value, BenchFault>): Value | null {
    if (!answer.ok) faults[field] = answer.fault;
    return answer.ok ? answer.value : null;
  }
  /** The value of a field; an empty one has no fault. */
  function read<Name extends Quantity>(field: Name): BenchValues[Name] | null {
    const entry: BenchEntries[Name] = entries[field];
    return entry && noted(field, entry.read);
  }

  const factor = read('converter');
  const focalLength = factor === null ? subject.focalLength : focalLengthWith(factor, subject.focalLength);
  const shown = read('aperture');
  const aperture = shown !== null && factor !== null ? apertureWith(factor, shown) : shown;
  const closest = read('closest');
  const reach = from === 'film plane' ? millimetres(0) : reachEntered();
  const measuredDistance = read('distance');
  const distance = measuredDistance === null ? subject.distance : fromFilmPlane({ from, distance: measuredDistance }, reach);
  const sensor = readSensor(size);
  const pixels = read('pixels');
  const pitch = pixels === null ? null : noted('pixels', pixelPitch(sensor, pixels));
  const area = read('area');
  const worth = read('worth');
  const confusionRule = ruleEntered();
  const length = read('printed');
  const print = length === null ? null : noted('printed', checkPrint(SCALE, millimetres(length)));
  const scale = printed(SCALE, print?.factor ?? TRUE_SIZE);
  const spanned = read('scalePixels');
  const measured = pitch === null || spanned === null ? null : noted('scalePixels', measuredMagnification(scale, spanned, pitch));

  const complete = aperture !== null && pitch !== null && area !== null && worth !== null && confusionRule !== null && !faults.converter;
  const rig: Rig | null = complete
    ? { focalLength, aperture, distance: { from: 'film plane', distance }, measured, sensor, pitch, confusionRule, area, worth }
    : null;
  return { faults, unit, distance, reach, focalLength, converter: factor, closest, print, rig, bench: rig && benchOf(rig) };

  function reachEntered(): Millimetres {
    const reach = read('reach');
    if (reach === null) faults.reach ??= { is: 'no reach' };
    return reach ?? millimetres(0);
  }

  function ruleEntered(): ConfusionRule | null {
    if (confusion !== 'own') return { by: confusion };
    const diameter = read('ownConfusion');
    if (diameter === null) faults.ownConfusion ??= { is: 'no circle of confusion' };
    return diameter && { by: 'own', diameter };
  }
}

/** Needed here, though the rig may do without: an empty field is a fault of its own. */
export const needed = <Value>(entry: BenchEntry<Value> | null, otherwise: PlainFault): Result<Value, BenchFault> =>
  entry === null ? failed({ is: otherwise }) : entry.read;
