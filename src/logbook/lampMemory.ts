// How the light of a body failed in its last sweeps, and how far outside the band: the next sweep need not learn it anew.
import type { Kit } from '../kit/kit.ts';
import type { Memory } from '../sweep/memory.ts';
import type { HandRecord } from './byHand.ts';
import { keptHolds, wasRewritten } from './keptHolds.ts';
import type { LogRecord } from './record.ts';

type Lamp = NonNullable<Memory['lamp']>;

/** Sweeps that count, the newest ones; a lamp does not change, but an eye for it may. */
const SWEEPS = 3;

/** Sweeps on the practice camera, and those in which no band was seen whole, teach nothing. */
export function rememberedLamp(body: string, records: readonly (LogRecord | HandRecord)[], kit: Kit): Lamp {
  const ofBody = new Set(kit.situations.filter((situation) => situation.body === body).map(({ id }) => id));
  return records
    .filter((record): record is LogRecord => 'journal' in record && !record.practice && ofBody.has(record.subject.situation))
    .toSorted((a, b) => b.finished - a.finished)
    .filter(({ journal }) => !wasRewritten(journal))
    .slice(0, SWEEPS)
    .flatMap(sightingsIn);
}

function sightingsIn(record: LogRecord): Lamp {
  const { outcome, journal } = record;
  const [opened] = journal;
  if (outcome.found !== 'band' || outcome.ends !== 'seen' || opened?.did !== 'opened') return [];
  const { scale } = opened.plan;
  return keptHolds(record).flatMap(({ value, verdict: { light }, reading }) => {
    if (reading.counts === 'in' || (light !== 'late' && light !== 'flicker' && light !== 'dark')) return [];
    // The edges lie half a step outside the outermost values that held.
    return [{ outside: Math.max(outcome.low - value, value - outcome.high) / scale.step - 0.5, light }];
  });
}
