import { expect, test } from 'vitest';
import { LateOutput } from '../../../src/voice/ownWords/lateOutput.ts';

const after = (...ranOn: readonly number[]): number => {
  const late = new LateOutput();
  for (const frames of ranOn) late.note(frames);
  return late.frames;
};

test('how late the panel is heard is the middle of the last three, and nothing before that', () => {
  expect([after(), after(20), after(20, 30), after(20, 30, 10), after(90, 90, 20, 30, 10)]).toEqual([0, 0, 0, 20, 20]);
});

test('no loudspeaker is later than a second', () => {
  expect([after(100, 100, 0), after(101, 300, 0)]).toEqual([100, 100]);
});
