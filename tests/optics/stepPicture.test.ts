// Contract of the drawings of the walk: every step has one of its own, and the end shows the button that the holds are taken with.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { holdPicture, pictureOf } from '../../src/optics/setUp/stepPicture.ts';
import { setUpWalk } from '../../src/optics/setUp/walk.ts';
import { anyCase, plain } from './setUpCases.ts';

test('no two steps of a walk have the same drawing', () => {
  fc.assert(
    fc.property(anyCase, (given) => {
      const pictures = setUpWalk(given).map(({ said }) => pictureOf(said));
      expect(new Set(pictures).size).toBe(pictures.length);
    }),
  );
});

test('the drawing shows the way to square the target, to focus and to keep it that this rig takes', () => {
  const pictures = (given: typeof plain) => setUpWalk(given).map(({ said }) => pictureOf(said));
  expect(pictures(plain)).toEqual(expect.arrayContaining(['level', 'mirror', 'live-view magnifier', 'focus switch on the body']));
  const other = { ...plain, squareBy: 'spot', body: { ...plain.body, liveView: false, manualAtBody: false } } as const;
  expect(pictures(other)).toEqual(expect.arrayContaining(['returning spot', 'three photographs', 'focus switch on the lens']));
});

test('the end of the walk shows the half-press, or the rear button where the body focuses by it', () => {
  expect(holdPicture(setUpWalk(plain))).toBe('half-press');
  expect(holdPicture(setUpWalk({ ...plain, body: { ...plain.body, rearButton: true } }))).toBe('rear button');
});
