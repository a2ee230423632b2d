// How the light of a body failed in its last sweeps, and how far outside the band: the next sweep need not learn it anew.
import type { Kit } from '../kit/kit.ts';
import type { Memory } from '../sweep/memory.ts';
import type { SweepEvent } from '../sweep/event.ts';
import { read } from '../sweep/verdict.ts';
import type { HandRecord } from './byHand.ts';
import type { LogRecord } from './record.ts';

type Lamp = NonNullable<Memory['lamp']>;

/** Sweeps that count, the newest ones; a lamp does not change, but an eye for it may. */
const SWEEPS = 3;
/** Journals in which something was taken back or begun afresh are left out: not all their holds are of one band. */
const REWRITTEN: readonly SweepEvent['did'][] = ['undid', 'amended', 'checked'];

/** Sweeps on the practice camera, and those in which no band was seen whole, teach nothing. */
export function rememberedLamp(body: string, records: readonly (LogRecord | HandRecord)[], kit: Kit): Lamp {
  const ofBody = new Set(kit.situations.filter((situation) => situation.body === body).map(({ id }) => id));
  return records
    .filter((record): record is LogRecord => 'journal' in record && !record.practice && ofBody.has(record.subject.situation))
    .toSorted((a, b) => b.finished - a.finished)
    .filter(({ journal }) => journal.every(({ did }) => !REWRITTEN.includes(did)))
    .slice(0, SWEEPS)
    .flatMap(sightingsIn);
}

function sightingsIn({ outcome, journal }: LogRecord): Lamp {
  const [opened] = journal;
  if (outcome.found !== 'band' || outcome.ends !== 'seen' || opened?.did !== 'opened') return [];
  const { scale, arrows } = opened.plan;
  const seen: Lamp = [];
  let value = 0;
  for (const event of journal) {
    if (event.did === 'began') value = event.value;
    if (event.did !== 'judged' || read(event.verdict, arrows).counts === 'in') continue;
    const { light } = event.verdict;
    // The edges lie half a step outside the outermost values that held.
    const outside = Math.max(outcome.low - value, value - outcome.high) / scale.step - 0.5;
    if (light === 'late' || light === 'flicker' || light === 'dark') seen.push({ outside, light });
  }
  return seen;
}
