// Contract of the tones: what is foreseen sounds once, on time by the audio clock, unless it is taken back or that clock stood still.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createSounding } from '../../src/platform/sounding.ts';
import { seconds } from '../../src/units.ts';

const END = [
  { hertz: 880, from: 0, to: 0.08 },
  { hertz: 587, from: 0.09, to: 0.2 },
];
const NOTED = [{ hertz: 1175, from: 0, to: 0.07 }];

let clock: { currentTime: number };
/** When each note sounds that was not taken back. */
let sounds: Set<{ hertz: number; at: number }>;

const heard = (): number[] => [...sounds].map(({ at }) => at);

beforeEach(() => {
  clock = { currentTime: 10 };
  sounds = new Set();
  class Context {
    state = 'running';
    get currentTime(): number {
      return clock.currentTime;
    }
  }
  class Oscillator {
    readonly note: { hertz: number; at: number };
    constructor(_context: Context, { frequency }: { frequency: number }) {
      this.note = { hertz: frequency, at: NaN };
    }
    connect = (next: unknown): unknown => next;
    disconnect(): void {
      sounds.delete(this.note);
    }
    start(at: number): void {
      this.note.at = at;
      sounds.add(this.note);
    }
    stop(): void {}
    addEventListener(): void {}
  }
  class Gain {
    gain = { setValueAtTime: () => undefined, linearRampToValueAtTime: () => undefined };
    connect = (next: unknown): unknown => next;
  }
  vi.stubGlobal('AudioContext', Context);
  vi.stubGlobal('OscillatorNode', Oscillator);
  vi.stubGlobal('GainNode', Gain);
});
afterEach(() => void vi.unstubAllGlobals());

const inSeconds = (time: number): void => void (clock.currentTime += time);

test('a foreseen tone sounds when it is due, and not again when it is asked for late', () => {
  const { foresee, cancel, play } = createSounding();
  foresee(END, seconds(5), 1);
  inSeconds(5.3);
  cancel();
  play(END, seconds(0), 1);
  expect(heard()).toEqual([15, 15.09]);
});

test('asked for a moment before it begins, it is left to begin', () => {
  const { foresee, cancel, play } = createSounding();
  foresee(END, seconds(5), 1);
  inSeconds(4.98);
  cancel();
  play(END, seconds(0), 1);
  expect(heard()).toEqual([15, 15.09]);
});

test('taken back before it is due, it never sounds, and is sounded when it is asked for', () => {
  const { foresee, cancel, play } = createSounding();
  foresee(END, seconds(5), 1);
  inSeconds(2);
  cancel();
  play(NOTED, seconds(0), 1);
  expect(heard()).toEqual([12]);
  play(END, seconds(0), 1);
  expect(heard()).toEqual([12, 12, 12.09]);
});

test('where the audio clock fell behind, it sounds when it is asked for, and only then', () => {
  const { foresee, cancel, play } = createSounding();
  foresee(END, seconds(5), 1);
  inSeconds(2);
  cancel();
  foresee(END, seconds(5), 1);
  inSeconds(2.5);
  play(END, seconds(0), 1);
  expect(heard()).toEqual([14.5, 14.59]);
});

test('of two that are foreseen the newer counts', () => {
  const { foresee } = createSounding();
  foresee(END, seconds(5), 1);
  inSeconds(1);
  foresee(END, seconds(5), 1);
  expect(heard()).toEqual([16, 16.09]);
});

test('another tone meanwhile changes nothing about it', () => {
  const { foresee, play, cancel } = createSounding();
  foresee(END, seconds(5), 1);
  inSeconds(1);
  play(NOTED, seconds(0), 1);
  inSeconds(4.1);
  cancel();
  play(END, seconds(0), 1);
  expect(heard()).toEqual([15, 15.09, 11]);
});
