// What was read at the bench goes with the sweep it was read for, whether its owner walks through the set-up or not.
import { benchFrom, EMPTY_BENCH, withReadings, type BenchReading, type BenchRecord, type ReadingKind } from '../../optics/setUp/reading.ts';
import type { Session } from '../session/session.ts';
import type { Entered } from './fields.ts';
import { cornersOf } from './given.ts';
import { readingOf } from './readings.ts';
import type { Reckoned } from './reckon.ts';
import type { BenchSubject } from './subject.ts';
import { noteIn, type BenchStore } from './typed.ts';

const READ: readonly Exclude<ReadingKind, 'live view'>[] = [
  'distance',
  'print',
  'magnification',
  'light',
  'mirror',
  'spot',
  'sides',
  'placement',
  'old value',
  'temperature',
];

/** What is known of the rig by now: what was noted for it before, and every reading that is entered and fits. */
export function writtenDown(session: Session, bench: BenchStore, subject: BenchSubject, entered: Entered, reckoned: Reckoned): BenchRecord {
  const corners = cornersOf(reckoned);
  const readings = READ.flatMap((kind): BenchReading[] => {
    const reading = readingOf(kind, entered, reckoned, corners);
    return reading.ok ? [reading.value] : [];
  });
  return withReadings(before(session, bench, subject), readings);
}

function before(session: Session, bench: BenchStore, subject: BenchSubject): BenchRecord {
  const sweep = session.sweep.peek();
  if (sweep) return sweep.plan.bench ? benchFrom(sweep.plan.bench) : EMPTY_BENCH;
  const { noted } = bench.peek();
  return noted && isSame(noted.subject, subject) ? noted.bench : EMPTY_BENCH;
}

const isSame = (one: BenchSubject, other: BenchSubject): boolean =>
  one.body === other.body && one.lens === other.lens && one.focalLength === other.focalLength && one.distance === other.distance;

/** Notes it for the sweep to come, or with the one under way; false where that one has its first hold already. */
export function writeDown(session: Session, bench: BenchStore, subject: BenchSubject, record: BenchRecord): boolean {
  if (session.sweep.peek() !== null) return session.noteBench(record);
  noteIn(bench, { subject, bench: record });
  return true;
}
