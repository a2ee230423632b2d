// Taking in the last values that other computers have written. Each becomes a line of the history here, so the latest
// by time stands and nothing that was here is overwritten; taking the same in twice adds nothing.
import * as v from 'valibot';
import { Distance, FocalLength } from '../../kit/lengths.ts';
import { Moment, moment, Steps } from '../../units.ts';
import { unknownConditions } from '../conditions.ts';
import { pairingsOf, subjectFrom, type Kit } from '../../kit/kit.ts';
import type { Subject } from '../../sweep/plan.ts';
import type { Library } from '../library.ts';
import { ALL_KEYS, ownKeys } from './pack.ts';

const Text = v.pipe(v.string(), v.minLength(1), v.maxLength(200));
const Value = v.tuple([Text, Steps, Moment, v.picklist(['e', 'm']), Text, Text, Text, FocalLength, Distance]);

export interface TakenIn {
  readonly library: Library;
  readonly added: number;
  /** Values that could not be read. */
  readonly unread: number;
}

/** Takes in what sync holds of every other computer. */
export function takeInCopies(library: Library, computer: string, synced: Readonly<Record<string, unknown>>): TakenIn {
  const own = ownKeys(computer);
  const lists = Object.entries(synced).filter(([key]) => key.startsWith(ALL_KEYS) && !key.startsWith(own));
  const here = new Set([...library.records, ...library.byHand, ...library.entries].map(({ id }) => id));
  const byHand = [...library.byHand];
  const entries = [...library.entries];
  const placed = placesIn(library.kit);
  let unread = 0;
  for (const value of lists.flatMap(([, list]): unknown[] => (Array.isArray(list) ? list : [list]))) {
    const read = v.safeParse(Value, value);
    if (!read.success) {
      unread++;
      continue;
    }
    const [id, chosen, at, kind, situation, body, lens, focalLength, distance] = read.output;
    if (here.has(id)) continue;
    here.add(id);
    const subject = placed({ situation, body, lens, focalLength, distance });
    const conditions = unknownConditions(moment(0));
    if (kind === 'e') entries.push({ id, at, subject, value: chosen, record: null, conditions });
    else
      byHand.push({
        id,
        at,
        subject,
        source: 'from another computer',
        finding: { known: 'value', chosen },
        conditions,
      });
  }
  const added = byHand.length + entries.length - library.byHand.length - library.entries.length;
  return { library: { ...library, byHand, entries }, added, unread };
}

/**
 * The same kit may have been set up on each computer. A situation that is not known here, but has the names and lengths
 * of exactly one that is, is that one.
 */
function placesIn(kit: Kit): (subject: Subject) => Subject {
  const pairing = pairingsOf(kit);
  const known = new Set(kit.situations.map(({ id }) => id));
  const named = new Map<string, string | null>();
  for (const situation of kit.situations) {
    const name = nameOf(subjectFrom(situation, pairing(situation)));
    named.set(name, named.has(name) ? null : situation.id);
  }
  return (subject) => {
    const same = known.has(subject.situation) ? null : named.get(nameOf(subject));
    return same ? { ...subject, situation: same } : subject;
  };
}

const nameOf = ({ body, lens, focalLength, distance }: Subject): string =>
  [body, lens].map((name) => name.trim().toLowerCase().replace(/\s+/g, ' ')).join('\n') + `\n${focalLength}\n${distance}`;
