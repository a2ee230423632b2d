// Contract of the panel's side of the practice camera: every picture asked for is told of once, with its file or without, and after a
// stop nothing more is told.
import { afterEach, expect, test, vi } from 'vitest';
import type { PracticeWanted } from '../../src/platform/pictures/practiceBridge.ts';
import { practiceShooter } from '../../src/platform/pictures/practiceShooter.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';

class FakeWorker extends EventTarget {
  static readonly all: FakeWorker[] = [];
  readonly asked: number[] = [];
  ended = false;
  constructor() {
    super();
    FakeWorker.all.push(this);
  }
  postMessage({ number }: PracticeWanted): void {
    this.asked.push(number);
  }
  terminate(): void {
    this.ended = true;
  }
  answer(number: number): void {
    this.dispatchEvent(Object.assign(new Event('message'), { data: { number, jpeg: new Blob() } }));
  }
}

afterEach(() => {
  vi.unstubAllGlobals();
  FakeWorker.all.length = 0;
});

function shooting() {
  vi.stubGlobal('Worker', FakeWorker);
  vi.stubGlobal('location', { href: 'https://panel.invalid/panel.html' });
  const told: string[] = [];
  const shooter = practiceShooter((number, jpeg) => told.push(`${number} ${jpeg === null ? 'none' : 'taken'}`));
  shooter.take([1, 2, 3].map((number): PracticeWanted => ({ seed: 1, scale: USUAL_SCALE, turn: { by: 'live view' }, number })));
  return { shooter, told, worker: FakeWorker.all[0] };
}

test('pictures are taken in their order, and the worker is let go after the last', () => {
  const { told, worker } = shooting();
  expect(worker?.asked).toEqual([1, 2, 3]);
  worker?.answer(1);
  worker?.answer(2);
  expect(worker?.ended).toBe(false);
  worker?.answer(3);
  expect([told, worker?.ended]).toEqual([['1 taken', '2 taken', '3 taken'], true]);
});

test('where the worker ends, those that are not taken are told of without a file, and a new one takes the next', () => {
  const { told, worker, shooter } = shooting();
  worker?.answer(1);
  worker?.dispatchEvent(new Event('error'));
  expect([told, worker?.ended]).toEqual([['1 taken', '2 none', '3 none'], true]);
  shooter.take([{ seed: 1, scale: USUAL_SCALE, turn: { by: 'live view' }, number: 4 }]);
  expect(FakeWorker.all.map(({ asked }) => asked)).toEqual([[1, 2, 3], [4]]);
});

test('after a stop the worker is ended, and nothing that comes late is told', () => {
  const { told, worker, shooter } = shooting();
  shooter.cancel();
  worker?.answer(1);
  expect([told, worker?.ended]).toEqual([[], true]);
});
