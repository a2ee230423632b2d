// Contract of what is called written: everything told so far is on disk, a newer value too; and what the disk refuses is not.
import { expect, test } from 'vitest';
import { createKeeper } from '../../../src/panel/session/keeper.ts';
import { createTroubles } from '../../../src/panel/session/troubles.ts';
import type { Store } from '../../../src/platform/storage.ts';
import { failed, got } from '../../../src/result.ts';
import { readWords } from '../../../src/words/catalogue.ts';
import { settle } from './world.ts';

await readWords('store');

/** A disk that answers each write when the test says so. */
function keeping() {
  const disk: Record<string, unknown> = {};
  const answers: ((takes: boolean) => void)[] = [];
  const store: Store = {
    read: () => Promise.resolve(got({ ...disk })),
    readSome: () => Promise.resolve(got({ ...disk })),
    write: (entries) =>
      new Promise((done) => {
        answers.push((takes) => {
          if (takes) Object.assign(disk, entries);
          done(takes ? got(undefined) : failed({ is: 'not written', why: 'full' }));
        });
      }),
    remove: () => Promise.resolve(got(undefined)),
    onChange: () => undefined,
  };
  const keeper = createKeeper(store, createTroubles());
  const answer = async (takes: boolean): Promise<void> => {
    answers.shift()?.(takes);
    await settle();
  };
  return { disk, keeper, answer };
}

/** What it came to, as soon as it has. */
function told(promise: Promise<boolean>): { now: boolean | null } {
  const seen: { now: boolean | null } = { now: null };
  void promise.then((written) => (seen.now = written));
  return seen;
}

test('nothing to write is written', async () => {
  expect(await keeping().keeper.written()).toBe(true);
});

test('a value is written when the disk has taken it, and until then its key is unwritten', async () => {
  const { disk, keeper, answer } = keeping();
  void keeper.keep({ kit: 1 });
  const written = told(keeper.written());
  await settle();
  expect([written.now, [...keeper.unwritten.value], disk]).toEqual([null, ['kit'], {}]);
  await answer(true);
  expect([written.now, [...keeper.unwritten.value], disk]).toEqual([true, [], { kit: 1 }]);
});

test('a newer value that takes its place meanwhile is waited for, too', async () => {
  const { disk, keeper, answer } = keeping();
  void keeper.keep({ kit: 1 });
  const written = told(keeper.written());
  await settle();
  void keeper.keep({ kit: 2 });
  await answer(true);
  expect([written.now, [...keeper.unwritten.value]]).toEqual([null, ['kit']]);
  await answer(true);
  expect([written.now, disk]).toEqual([true, { kit: 2 }]);
});

test('what the disk refuses is not written, and its key stays unwritten', async () => {
  const { keeper, answer } = keeping();
  void keeper.keep({ kit: 1 });
  const written = told(keeper.written());
  await settle();
  await answer(false);
  expect([written.now, [...keeper.unwritten.value]]).toEqual([false, ['kit']]);
  keeper.forget('kit');
  expect([...keeper.unwritten.value]).toEqual([]);
});
