// Contract of the ladder: it settles where the published rule says.
import { expect, test } from 'vitest';
import { climb, levelOf, type Ladder } from '../../../src/practice/training/ladder.ts';
import { LAST_LEVEL } from '../../../src/practice/training/levels.ts';
import { seededRandom } from '../../../src/practice/random.ts';

test('two right in a row lead one level up, one wrong leads one down, and neither leads off the ladder', () => {
  const one: Ladder = { level: 3, inARow: 0 };
  expect(climb(one, true)).toEqual({ level: 3, inARow: 1 });
  expect(climb(climb(one, true), true)).toEqual({ level: 4, inARow: 0 });
  expect(climb(climb(one, true), false)).toEqual({ level: 2, inARow: 0 });
  expect(climb({ level: 1, inARow: 1 }, false)).toEqual({ level: 1, inARow: 0 });
  expect(climb({ level: LAST_LEVEL, inARow: 1 }, true)).toEqual({ level: LAST_LEVEL, inARow: 0 });
});

test('every level is harder than the one before it', () => {
  for (let level = 2; level <= LAST_LEVEL; level++) {
    expect(levelOf(level).delay).toBeLessThan(levelOf(level - 1).delay);
    expect(levelOf(level).gap).toBeLessThan(levelOf(level - 1).gap);
  }
});

// Levitt 1971, J. Acoust. Soc. Am. 49:467, table I: two down, one up converges on 70.7 %. On a coarse ladder the share
// wavers about it, so an eye that worsens evenly from level to level is asked, and four points either way are allowed.
test('an eye that worsens from level to level ends up right about 70.7 % of the time', () => {
  const random = seededRandom(71);
  let ladder: Ladder = { level: 1, inARow: 0 };
  let right = 0;
  const trials = 40_000;
  for (let trial = 0; trial < trials; trial++) {
    const isRight = random() < 1 - 0.075 * (ladder.level - 0.5);
    right += Number(isRight);
    ladder = climb(ladder, isRight);
  }
  expect(Math.abs(right / trials - Math.SQRT1_2)).toBeLessThan(0.04);
});
