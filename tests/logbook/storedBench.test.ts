// Contract of how a rig lies with its sweep: what was stored before there was a bench still fits, what was noted is read
// back, and what a newer program noted keeps neither the sweep nor the rest of the bench from being read.
import { readFileSync } from 'node:fs';
import * as v from 'valibot';
import { expect, test } from 'vitest';
import { contentsOf, type Stored } from '../../src/logbook/stored.ts';
import { BenchReading, benchFrom, type BenchRecord } from '../../src/optics/setUp/reading.ts';
import { replay } from '../../src/sweep/transition.ts';
import { opened } from '../sweep/staged.ts';

/** Written by the program as it was before it knew a bench. */
const OLD = JSON.parse(readFileSync('tests/fixtures/without-a-bench.json', 'utf8')) as Stored;

const reading = (value: unknown): BenchReading => v.parse(BenchReading, value);
const BENCH: BenchRecord = {
  ticked: ['tripod', 'light', 'hold focus'],
  readings: [reading({ reads: 'light', iso: 400, aperture: 1.8, shutter: 0.01, ev: 6.3 }), reading({ reads: 'live view', asked: 'start', sharp: true })],
};
const throughDisk = (live: unknown): ReturnType<typeof contentsOf> => contentsOf(JSON.parse(JSON.stringify({ live: [live] })) as Stored);
const benchOf = ({ contents }: ReturnType<typeof contentsOf>) => {
  const bench = contents.live && replay(contents.live).plan.bench;
  return bench ? benchFrom(bench) : bench;
};

test('a journal and a record from before the bench are read whole, and have none', () => {
  const { contents, spoilt } = contentsOf(OLD);
  expect(spoilt).toEqual([]);
  expect(contents.records.map(({ id }) => id)).toEqual(['sweep-1']);
  for (const journal of [contents.records[0]?.journal, contents.live]) {
    expect(journal && replay(journal).plan.bench).toBeUndefined();
  }
  expect(contents.records[0]).toEqual(OLD['record:sweep-1']);
  expect(contents.live).toEqual(OLD['live']);
});

test('ticks and readings come back from the disk as they were noted', () => {
  const read = throughDisk(opened({ bench: BENCH }));
  expect(read.spoilt).toEqual([]);
  expect(benchOf(read)).toEqual(BENCH);
});

test('a tick and a reading that this program does not know are left out, and the rest is shown', () => {
  const newer = {
    ticked: [...BENCH.ticked, 'humidity'],
    readings: [...BENCH.readings, { reads: 'humidity', percent: 40 }, { reads: 'light', iso: 'high' }],
  };
  const read = throughDisk(opened({ bench: newer }));
  expect(read.spoilt).toEqual([]);
  expect(benchOf(read)).toEqual(BENCH);
});

test('a bench that is none is named, and set aside with its journal', () => {
  const { contents, spoilt } = throughDisk({ ...opened(), plan: { ...opened().plan, bench: 'square' } });
  expect(contents.live).toBeNull();
  expect(spoilt).toMatchObject([{ key: 'live', field: expect.stringContaining('bench') }]);
});
