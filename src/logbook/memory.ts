// What the logbook brings to a sweep. The same situation measured before says most about the centre, another focal
// length or distance of the same pairing less, and lenses as wide tell how wide the band will be. Spreads: common
// practice and simulation, no source. The plain prior keeps its share in any case, so a wrong memory is overruled in a
// few holds.
import { pairingsOf, type Kit, type Lens, type Situation } from '../kit/kit.ts';
import { widestAt } from '../kit/lens.ts';
import { NO_MEMORY, type Memory } from '../sweep/memory.ts';
import type { HandRecord } from './byHand.ts';
import { byTime } from './history.ts';
import { keptHolds, wasRewritten } from './keptHolds.ts';
import { rememberedLamp } from './lampMemory.ts';
import { measuredIn, type Measured } from './measured.ts';
import type { LogRecord } from './record.ts';

/**
 * Spread of a centre in steps: measured here before, measured elsewhere with this pairing, or read off the camera. A
 * lens that has changed by more is left to the plain share of the prior: what that costs, `npm run bench` says.
 */
const SAME = 0.7;
const PAIRING = 3;
const READ_OFF = 3;
/** Half of a 95 % interval in standard deviations. */
const HALF_95 = 1.96;
/** Lenses whose widest apertures differ by less than this, in stops, are as wide. */
const AS_WIDE = 0.4;
/** Fewer comparable bands than this say nothing of the width; their spread is believed within these bounds. */
const FEWEST = 3;
const LEAST_SPREAD = 0.25;
const MOST_SPREAD = 0.6;
/** Spread of the logarithm of a width measured in the same situation. */
const OWN_SPREAD = 0.1;

/** Memory for a sweep of this situation; sweeps on the practice camera teach nothing. */
export function memoryFor(situation: Situation, records: readonly (LogRecord | HandRecord)[], kit: Kit): Memory {
  const body = kit.bodies.find(({ id }) => id === situation.body);
  if (!body) return NO_MEMORY;
  const step = body.scale.step;
  const newest = newestOf(records);
  const own = newest.get(situation.id);
  const situations = kit.situations.filter((other) => other.id !== situation.id && other.body === body.id);
  const paired = situations
    .filter((other) => other.lens === situation.lens && other.converter === situation.converter)
    .flatMap((other) => newest.get(other.id) ?? []);
  const ends = endsOf(records.find(({ id }) => id === own?.id));
  const lamp = rememberedLamp(body.id, records, kit);
  return {
    centres: own ? centresOf([own], 'situation', step) : centresOf(paired, 'pairing', step),
    halfWidth: ownWidth(own, step) ?? widthOf(asWide(situation, situations, kit, newest), step),
    ...(ends && { ends }),
    ...(lamp.length > 0 && { lamp }),
  };
}

/** Per situation the newest measurement that says where the centre is. */
function newestOf(records: readonly (LogRecord | HandRecord)[]): Map<string, Measured> {
  const newest = new Map<string, Measured>();
  for (const measured of records.map(measuredIn)) {
    const known = newest.get(measured.subject.situation);
    const tells = measured.chosen !== null || measured.interval !== null;
    if (tells && !measured.practice && (!known || byTime(known, measured) < 0)) newest.set(measured.subject.situation, measured);
  }
  return newest;
}

function centresOf(known: readonly Measured[], of: 'situation' | 'pairing', step: number): Memory['centres'] {
  const sd = of === 'situation' ? SAME : PAIRING;
  return known.flatMap((measured) => {
    const { interval } = measured;
    const centre = measured.centre ?? measured.chosen ?? (interval ? (interval.from + interval.to) / 2 : null);
    if (centre === null) return [];
    const unsure = interval ? (interval.to - interval.from) / 2 / HALF_95 / step : 0;
    const spread = Math.hypot(measured.found === 'value' ? Math.max(sd, READ_OFF) : sd, unsure);
    return [{ centre, sd: spread, weight: 1 / known.length, from: { at: measured.at, of } }];
  });
}

/** Half a band in steps of the scale: the edges lie half a step outside the outermost values that held. */
function halfWidthOf({ low, high }: Measured, step: number): number | null {
  return low === null || high === null ? null : (high - low + step) / 2 / step;
}

function ownWidth(own: Measured | undefined, step: number): Memory['halfWidth'] {
  const half = own ? halfWidthOf(own, step) : null;
  return half === null ? null : { median: half, logSd: OWN_SPREAD };
}

/** Where a sweep saw both ends, and the value to enter where that was itself held. */
function endsOf(record: LogRecord | HandRecord | undefined): Memory['ends'] | null {
  if (!record || !('outcome' in record) || record.outcome.found !== 'band' || record.outcome.ends !== 'seen') return null;
  const { low, high, chosen } = record.outcome;
  const proven = !wasRewritten(record.journal) && keptHolds(record).some(({ value, reading }) => value === chosen && reading.counts === 'in');
  return { low, high, ...(proven && { proven: chosen }) };
}

/** Measurements on this body of lenses as wide as this one, whatever their focal length. */
function asWide(situation: Situation, situations: readonly Situation[], kit: Kit, newest: ReadonlyMap<string, Measured>): Measured[] {
  const pairing = pairingsOf(kit);
  const widest = ({ focalLength }: Situation, lens: Lens | null) => (lens ? widestAt(lens, focalLength) : null);
  const wanted = widest(situation, pairing(situation).lens);
  if (wanted === null) return [];
  return situations.flatMap((other) => {
    const aperture = widest(other, pairing(other).lens);
    const measured = newest.get(other.id);
    const near = aperture !== null && Math.abs(2 * Math.log2(aperture / wanted)) < AS_WIDE;
    return near && measured && other.converter === situation.converter ? [measured] : [];
  });
}

function widthOf(known: readonly Measured[], step: number): Memory['halfWidth'] {
  const logs = known.flatMap((measured) => {
    const half = halfWidthOf(measured, step);
    return half === null ? [] : [Math.log(half)];
  });
  if (logs.length < FEWEST) return null;
  logs.sort((a, b) => a - b);
  const middle = (logs.length - 1) / 2;
  const median = ((logs[Math.floor(middle)] ?? 0) + (logs[Math.ceil(middle)] ?? 0)) / 2;
  const spread = Math.sqrt(logs.reduce((sum, log) => sum + (log - median) ** 2, 0) / (logs.length - 1));
  return { median: Math.exp(median), logSd: Math.min(MOST_SPREAD, Math.max(LEAST_SPREAD, spread)) };
}
