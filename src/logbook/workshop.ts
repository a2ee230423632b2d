// What a workshop is shown of a band that no correction reaches whole: the pair, what was found, every hold of the series it
// rests on, in the order they were made, and what photographs showed.
import { pairingsOf, type Pairing } from '../kit/kit.ts';
import type { Hold } from '../sweep/hold.ts';
import type { Plan } from '../sweep/plan.ts';
import { replay } from '../sweep/transition.ts';
import { read, type Reading, type Verdict } from '../sweep/verdict.ts';
import type { Steps } from '../units.ts';
import { byTime } from './history.ts';
import type { Library } from './library.ts';
import type { ProofRecord } from './proofRecord.ts';
import type { LogRecord } from './record.ts';

export interface WorkshopCase {
  readonly record: LogRecord;
  readonly plan: Plan;
  /** The pair as the kit has it; its parts are null where it is no longer there. */
  readonly pairing: Pairing;
  readonly inFocus: Series;
  /** Null without a width transfer. */
  readonly aside: Series | null;
  /** What photographs of this situation showed, newest first. */
  readonly proofs: readonly ProofRecord[];
}

export interface Series {
  /** Its own record; null where that is no longer in the logbook. */
  readonly record: LogRecord | null;
  readonly holds: readonly SeenHold[];
}

interface SeenHold {
  readonly value: Steps;
  readonly verdict: Verdict;
  readonly counts: Reading['counts'];
}

export function evidenceOf(record: LogRecord, { kit, records, proofs: all }: Pick<Library, 'kit' | 'records' | 'proofs'>): WorkshopCase {
  const { plan, holds } = replay(record.journal);
  const { transfer } = plan;
  const situation = kit.situations.find(({ id }) => id === record.subject.situation);
  const pairing = situation ? pairingsOf(kit)(situation) : { body: null, lens: null, converter: null };
  const proofs = all
    .filter(({ practice, subject }) => practice === record.practice && subject.situation === record.subject.situation)
    .toSorted((one, other) => byTime(other, one));
  const own = { record, holds: holds.map(seen) };
  if (!transfer) return { record, plan, pairing, inFocus: own, aside: null, proofs };
  const first = records.find(({ id }) => id === transfer.of) ?? null;
  const carried = transfer.holds.map((hold) => ({ ...hold, counts: read(hold.verdict, plan.arrows).counts }));
  return { record, plan, pairing, inFocus: { record: first, holds: carried }, aside: own, proofs };
}

const seen = ({ value, verdict, reading }: Hold): SeenHold => ({ value, verdict, counts: reading.counts });
