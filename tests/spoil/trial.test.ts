import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { failureOf, type Failure } from './failure.ts';
import { placesIn } from './places.ts';
import { relatedTo, type Related } from './related.ts';
import type { Running } from './running.ts';
import { table, type Judged } from './table.ts';
import { tried } from './trial.ts';

const FILE = 'src/a.ts';
const SOUND = 'export const less = (a: number, b: number) => a < b;\n';
const [place] = placesIn(FILE, SOUND);
if (place === undefined) throw new Error('no place');

let root = '';
beforeEach(() => {
  ran = { [near.test]: 10, [far.test]: 10 };
  root = mkdtempSync(join(tmpdir(), 'spoil-test-'));
  mkdirSync(join(root, 'src'));
  writeFileSync(join(root, FILE), SOUND);
});
afterEach(() => rmSync(root, { recursive: true }));

const near: Related = { test: 'tests/a.test.ts', distance: 0 };
const far: Related = { test: 'tests/b.test.ts', distance: 3 };
const fails = (by: Failure['by'], file = near.test): Failure => ({ by, file, test: 'less', said: 'no' });

/** Answers in turn, and keeps what it was asked and what it found in the file; `ran` by the first order, where nothing fails. */
let ran: Record<string, number> = {};
function runnerThat(...answers: readonly (Failure | null | 'hangs')[]): Running & { readonly asked: { tests: readonly string[]; text: string }[] } {
  const asked: { tests: readonly string[]; text: string }[] = [];
  return {
    asked,
    async ask({ tests }) {
      asked.push({ tests, text: readFileSync(join(root, FILE), 'utf8') });
      const answer = answers[asked.length - 1] ?? null;
      return answer === 'hangs' ? null : { failed: answer, took: asked.length === 1 && answer === null ? ran : {} };
    },
    end() {},
  };
}

const SPOILT = 'export const less = (a: number, b: number) => a <= b;\n';
const knownToPass = () => new Map([[near.test, 10]]);

test('the tests see it spoiled, in their order, and it is mended', async () => {
  const runner = runnerThat(null);
  expect(await tried(place, [near, far], { root, runner, took: knownToPass() })).toMatchObject({ outcome: 'survived' });
  expect(runner.asked).toEqual([{ tests: [near.test, far.test], text: SPOILT }]);
  expect(readFileSync(join(root, FILE), 'utf8')).toBe(SOUND);
});

test('before it is said to survive, a near test that there was no time for is run', async () => {
  ran = { [far.test]: 10 };
  const runner = runnerThat(null, fails('assertion'));
  expect(await tried(place, [far, near], { root, runner, took: knownToPass() })).toMatchObject({ outcome: 'assertion' });
  expect(runner.asked).toEqual([
    { tests: [far.test, near.test], text: SPOILT },
    { tests: [near.test], text: SPOILT },
  ]);
  ran = { [near.test]: 10 };
  const whole = runnerThat(null);
  expect(await tried(place, [near, far], { root, runner: whole, took: knownToPass() })).toMatchObject({ outcome: 'survived' });
  expect(whole.asked).toHaveLength(1);
});

test.each(['assertion', 'error', 'time'] as const)('how it was noticed is told: %s', async (by) => {
  const runner = runnerThat(fails(by));
  expect(await tried(place, [near, far], { root, runner, took: knownToPass() })).toMatchObject({ outcome: by, noticed: 'tests/a.test.ts: less: no' });
  expect(runner.asked).toHaveLength(1);
});

test('tests that never end are told as time, and it is mended', async () => {
  expect(await tried(place, [near], { root, runner: runnerThat('hangs'), took: knownToPass() })).toMatchObject({ outcome: 'time' });
  expect(readFileSync(join(root, FILE), 'utf8')).toBe(SOUND);
});

test('a test that was never seen to pass is run unspoiled before it counts', async () => {
  const runner = runnerThat(fails('assertion'), null);
  expect(await tried(place, [near], { root, runner, took: new Map() })).toMatchObject({ outcome: 'assertion' });
  expect(runner.asked[1]).toEqual({ tests: [near.test], text: SOUND });
  const always = runnerThat(fails('assertion'), fails('assertion'));
  await expect(tried(place, [near], { root, runner: always, took: new Map() })).rejects.toThrow('tests/a.test.ts fails unspoiled');
});

test('the test of the file comes first, then who imports it, then its folder and the others; but a slow one after many a quick one', () => {
  const importedBy = new Map([
    ['src/room/a.ts', ['src/room/b.ts', 'tests/other/direct.test.ts', 'tests/room/a.test.ts']],
    ['src/room/b.ts', ['src/room/c.ts', 'tests/far/slow.test.ts', 'tests/far/quick.test.ts', 'tests/panel/shown.test.ts']],
    ['src/room/c.ts', ['tests/room/c.test.ts']],
  ]);
  const took = (file: string): number => ({ 'tests/far/slow.test.ts': 900, 'tests/far/quick.test.ts': 90 })[file] ?? 100;
  expect(relatedTo('src/room/a.ts', importedBy, took)).toEqual([
    { test: 'tests/room/a.test.ts', distance: 0 },
    { test: 'tests/other/direct.test.ts', distance: 1 },
    { test: 'tests/far/quick.test.ts', distance: 2 },
    { test: 'tests/room/c.test.ts', distance: 2 },
    { test: 'tests/far/slow.test.ts', distance: 2 },
  ]);
});

test('an assertion is told from an error and from a test that took too long, also as the cause of another error', () => {
  const by = (...errors: Parameters<typeof failureOf>[2]) => failureOf('a', 'b', errors).by;
  expect(by({ name: 'AssertionError', message: 'expected 1 to be 2' })).toBe('assertion');
  expect(by({ name: 'Error', message: 'Property failed', cause: { name: 'AssertionError', message: '' } })).toBe('assertion');
  expect(by({ name: 'Error', message: 'Snapshot `found 1` mismatched' })).toBe('assertion');
  expect(by({ name: 'TypeError', message: 'x is undefined' })).toBe('error');
  expect(by({ name: 'Error', message: 'Test timed out in 30000ms.' })).toBe('time');
});

test('the table counts every kind by what came of it', () => {
  const verdict = { outcome: 'survived', noticed: '', milliseconds: 1 } as const;
  const judged: Judged[] = (['survived', 'the same', 'assertion', 'assertion'] as const).map((outcome) => ({ place, verdict, outcome, why: '' }));
  const lines = table(judged)
    .split('\n')
    .map((line) => line.trim().split(/ {2,}/));
  expect(lines[0]).toEqual(['drawn', 'assertion', 'error', 'time', 'survived', 'the same']);
  expect(lines[2]).toEqual(['edge', '4', '2', '0', '0', '1', '1']);
  expect(lines.at(-1)).toEqual(['together', '4', '2', '0', '0', '1', '1']);
});
