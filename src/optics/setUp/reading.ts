// What was read while the rig was set up. It is stored with the sweep, so that a value can later be judged by the
// bench it came from. Readings are kept as they were read; what follows from them is reckoned anew.
import * as v from 'valibot';
import { Distance } from '../../kit/kit.ts';
import type { StoredBench } from '../../sweep/storedBench.ts';
import { Seconds, Steps } from '../../storedUnits.ts';
import { plain, type PlainFault } from '../fault.ts';
import { MEASURED_FROM } from '../measuredFrom.ts';
import { Degrees, Ev, FNumber } from '../quantity.ts';
import { FrontShare } from '../placement.ts';
import { STEP_IDS, type StepId } from './stepIds.ts';

const length = (otherwise: PlainFault) => v.pipe(v.number(otherwise), v.minValue(0, otherwise), v.maxValue(100_000, otherwise), v.brand('Millimetres'));
const above = (otherwise: PlainFault) => v.pipe(v.number(otherwise), v.minValue(Number.MIN_VALUE, otherwise), v.maxValue(100_000, otherwise));

const NO_SIDES = plain('no sides');
const NO_TEMPERATURE = plain('no temperature');

export const BenchReading = v.variant('reads', [
  v.object({ reads: v.literal('old value'), value: Steps }),
  v.object({
    reads: v.literal('print'),
    drawn: length('no drawn length'),
    measured: length('no printed length'),
  }),
  v.object({ reads: v.literal('distance'), distance: Distance, from: v.picklist(MEASURED_FROM) }),
  v.object({
    reads: v.literal('light'),
    iso: above('no iso speed'),
    aperture: FNumber,
    shutter: Seconds,
    /** As at ISO 100. */
    ev: Ev,
  }),
  v.object({
    reads: v.literal('mirror'),
    offset: length('no offset on the sensor'),
    tilt: Degrees,
  }),
  v.object({ reads: v.literal('spot'), offset: length('no spot'), tilt: Degrees }),
  v.object({
    reads: v.literal('sides'),
    left: above(NO_SIDES),
    right: above(NO_SIDES),
    top: above(NO_SIDES),
    bottom: above(NO_SIDES),
    tilt: Degrees,
    uncertainty: Degrees,
  }),
  v.object({
    reads: v.literal('magnification'),
    length: length('no length on the target'),
    pixels: above('no pixels'),
  }),
  v.object({
    reads: v.literal('temperature'),
    celsius: v.pipe(v.number(NO_TEMPERATURE), v.minValue(-50, NO_TEMPERATURE), v.maxValue(60, NO_TEMPERATURE)),
  }),
  v.object({
    reads: v.literal('live view'),
    asked: v.picklist(['start', 'finish', 'contradiction']),
    /** Whether critical focus was still there. */
    sharp: v.boolean(),
  }),
  v.object({ reads: v.literal('placement'), share: FrontShare }),
]);
export type BenchReading = v.InferOutput<typeof BenchReading>;
export type ReadingKind = BenchReading['reads'];

/** The bench as a sweep stores it. */
export const BenchRecord = v.object({
  ticked: v.array(v.picklist(STEP_IDS)),
  readings: v.array(BenchReading),
});
export type BenchRecord = v.InferOutput<typeof BenchRecord>;
export const EMPTY_BENCH: BenchRecord = { ticked: [], readings: [] };

/** The latest of a kind: a reading taken again replaces what it says, not what was written down. */
export function latest<K extends ReadingKind>(bench: BenchRecord, kind: K): Extract<BenchReading, { reads: K }> | null {
  const isOfKind = (reading: BenchReading): reading is Extract<BenchReading, { reads: K }> => reading.reads === kind;
  return bench.readings.filter(isOfKind).at(-1) ?? null;
}

/** The record with these readings too; one that says what its latest of the kind says is not written down again. */
export const withReadings = (bench: BenchRecord, readings: readonly BenchReading[]): BenchRecord => ({
  ...bench,
  readings: [...bench.readings, ...readings.filter((reading) => JSON.stringify(reading) !== JSON.stringify(latest(bench, reading.reads)))],
});

/** A stored bench, with what fits; a tick or a reading of a newer program is left out. */
export const benchFrom = ({ ticked, readings }: StoredBench): BenchRecord => ({
  ticked: ticked.filter((id): id is StepId => STEP_IDS.some((known) => known === id)),
  readings: readings.flatMap((reading) => {
    const known = v.safeParse(BenchReading, reading);
    return known.success ? [known.output] : [];
  }),
});
