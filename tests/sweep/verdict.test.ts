// How a hold is read: common practice, no source.
import { expect, test } from 'vitest';
import { read, type ArrowDisplay, type Reading, type Verdict } from '../../src/sweep/verdict.ts';
import { Arrows, Light } from '../../src/sweep/storedVerdict.ts';

const reading = (light: Light, arrows: Arrows, display: ArrowDisplay = 'right-is-up'): Reading => read({ light, arrows }, display);

test('a steady light counts in, alone or with both arrows evenly', () => {
  expect(reading('steady', 'none')).toEqual({ counts: 'in' });
  expect(reading('steady', 'balanced')).toEqual({ counts: 'in' });
});

test('a steady light with one arrow, or with one clearly more often, counts out and near the band', () => {
  expect(reading('steady', 'left')).toEqual({ counts: 'out', grade: 'near', side: 'below' });
  expect(reading('steady', 'right')).toEqual({ counts: 'out', grade: 'near', side: 'above' });
  expect(reading('steady', 'lopsided')).toEqual({ counts: 'out', grade: 'near', side: 'untold' });
});

test.each([
  ['late', 'near'],
  ['flicker', 'flicker'],
  ['dark', 'dark'],
  ['untold', 'untold'],
] as const)('a light that was %s counts out, whatever the arrows show', (light, grade) => {
  for (const arrows of Arrows.options) expect(reading(light, arrows)).toMatchObject({ counts: 'out', grade });
});

test('the right arrow sends the correction up, or down where the body is set the other way', () => {
  expect(reading('dark', 'right')).toMatchObject({ side: 'above' });
  expect(reading('dark', 'right', 'right-is-down')).toMatchObject({ side: 'below' });
});

test('on a body without arrows none is ever counted', () => {
  const all: Verdict[] = Light.options.flatMap((light) => Arrows.options.map((arrows) => ({ light, arrows })));
  for (const verdict of all) expect(read(verdict, 'absent')).toEqual(read({ ...verdict, arrows: 'none' }, 'absent'));
});
