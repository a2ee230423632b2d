// Contract of the panel's side of reading pictures: one at a time, a picture that ends the worker costs itself alone, and after
// a stop nothing more is told.
import { afterEach, expect, test, vi } from 'vitest';
import { TRUE_SIZE } from '../../src/optics/print/printCheck.ts';
import type { ToWorker } from '../../src/platform/pictures/bridge.ts';
import { pictureReader } from '../../src/platform/pictures/pictureReader.ts';

class FakeWorker extends EventTarget {
  static readonly all: FakeWorker[] = [];
  readonly asked: ToWorker[] = [];
  ended = false;
  constructor() {
    super();
    FakeWorker.all.push(this);
  }
  postMessage(wanted: ToWorker): void {
    this.asked.push(wanted);
  }
  terminate(): void {
    this.ended = true;
  }
  tell(data: unknown): void {
    this.dispatchEvent(Object.assign(new Event('message'), { data }));
  }
}

afterEach(() => {
  vi.unstubAllGlobals();
  FakeWorker.all.length = 0;
});

function reading() {
  vi.stubGlobal('Worker', FakeWorker);
  vi.stubGlobal('location', { href: 'https://panel.invalid/panel.html' });
  const told: string[] = [];
  const reader = pictureReader({
    onStage: (id, stage) => told.push(`${id} ${stage}`),
    onEnd: (id, picture) => told.push(`${id} ${picture.ok ? 'read' : picture.fault}`),
  });
  const wanted: ToWorker = {
    file: new File([], 'a.png'),
    east: 0,
    kit: { bodies: [], lenses: [], converters: [], situations: [] },
    situation: null,
    printed: TRUE_SIZE,
    practice: null,
  };
  reader.add(['a', 'b'].map((id) => ({ id, wanted })));
  return { reader, told };
}

const FAULT = { tells: 'end', picture: { ok: false, fault: 'no picture' } };

test('pictures are read one after another, and the worker is let go after the last', () => {
  const { told } = reading();
  const [worker] = FakeWorker.all;
  expect(worker?.asked.length).toBe(1);
  worker?.tell({ tells: 'stage', stage: 'decoding' });
  worker?.tell(FAULT);
  expect([worker?.asked.length, worker?.ended]).toEqual([2, false]);
  worker?.tell(FAULT);
  expect(told).toEqual(['a decoding', 'a no picture', 'b no picture']);
  expect([FakeWorker.all.length, worker?.ended]).toEqual([1, true]);
});

test('a picture over which the worker ends has its own fault, and a new worker reads the next', () => {
  const { told } = reading();
  FakeWorker.all[0]?.dispatchEvent(new Event('error'));
  expect(told).toEqual(['a stopped']);
  expect(FakeWorker.all.map(({ ended, asked }) => [ended, asked.length])).toEqual([
    [true, 1],
    [false, 1],
  ]);
});

test('after a stop the worker is ended, and nothing that comes late is told', () => {
  const { reader, told } = reading();
  const [worker] = FakeWorker.all;
  reader.cancel();
  worker?.tell(FAULT);
  expect([told, worker?.ended]).toEqual([[], true]);
});
