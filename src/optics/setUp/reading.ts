// What was read while the rig was set up. It is stored with the sweep, so that a value can later be judged by the
// bench it came from. Readings are kept as they were read; what follows from them is reckoned anew.
import * as v from 'valibot';
import { Distance } from '../../kit/kit.ts';
import type { StoredBench } from '../../sweep/storedBench.ts';
import { Seconds, Steps } from '../../units.ts';
import { Degrees, Ev, FNumber } from '../quantity.ts';
import { FrontShare } from '../placement.ts';
import { STEP_IDS, type StepId } from './stepIds.ts';

const length = (sentence: string) =>
  v.pipe(v.number(sentence), v.minValue(0, sentence), v.maxValue(100_000, sentence), v.brand('Millimetres'));
const above = (sentence: string) => v.pipe(v.number(sentence), v.minValue(Number.MIN_VALUE, sentence), v.maxValue(100_000, sentence));

const SIDE = 'Enter all four sides as they measure in live view, each above zero.';

export const BenchReading = v.variant('reads', [
  v.object({ reads: v.literal('old value'), value: Steps }),
  v.object({
    reads: v.literal('print'),
    drawn: length('The drawn length of the scale is missing.'),
    measured: length('Enter the printed scale\u2019s length in millimetres.'),
  }),
  v.object({ reads: v.literal('distance'), distance: Distance, from: v.picklist(['film plane', 'front of lens']) }),
  v.object({
    reads: v.literal('light'),
    iso: above('Enter the ISO speed as the camera shows it, such as 400.'),
    aperture: FNumber,
    shutter: Seconds,
    /** As at ISO 100. */
    ev: Ev,
  }),
  v.object({
    reads: v.literal('mirror'),
    offset: length('Enter the offset on the sensor in millimetres.'),
    tilt: Degrees,
  }),
  v.object({ reads: v.literal('spot'), offset: length('Enter the spot\u2019s offset in millimetres.'), tilt: Degrees }),
  v.object({
    reads: v.literal('sides'),
    left: above(SIDE),
    right: above(SIDE),
    top: above(SIDE),
    bottom: above(SIDE),
    tilt: Degrees,
    uncertainty: Degrees,
  }),
  v.object({
    reads: v.literal('magnification'),
    length: length('Enter the length on the target in millimetres.'),
    pixels: above('Count the pixels that the length spans in the full-size photograph.'),
  }),
  v.object({
    reads: v.literal('temperature'),
    celsius: v.pipe(
      v.number(),
      v.minValue(-50, 'Enter the temperature in degrees Celsius, from \u221250 to 60.'),
      v.maxValue(60, 'Enter the temperature in degrees Celsius, from \u221250 to 60.'),
    ),
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
