import { describe, expect, test } from 'vitest';
import { checkEntered, type CheckShot } from '../../src/photographs/checkEntered.ts';
import type { WithInterval } from '../../src/photographs/withInterval.ts';
import { focusErrorOf } from '../../src/photographs/focusError.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';
import { millimetres } from '../../src/units.ts';

const DEPTH = { front: millimetres(50), behind: millimetres(50), total: millimetres(100) };
const sure = (value: number, doubt = 1): WithInterval => ({ value, low: value - 1.96 * doubt, high: value + 1.96 * doubt });
const shotsOf = (values: readonly number[], doubt = 1): CheckShot[] =>
  values.map((value, index) => ({ thrown: index % 2 === 0 ? 'near' : 'far', error: sure(value, doubt) }));

describe('a check of the value entered', () => {
  test('confirms what surely lies within half the depth on either side', () => {
    expect(checkEntered(shotsOf([1, -2, 2, 0, 1, -1]), sure(0), DEPTH)?.verdict).toEqual({ is: 'confirmed' });
  });

  test('says where focus lies when it is shifted', () => {
    expect(checkEntered(shotsOf([58, 62, 61, 59]), sure(0), DEPTH)?.verdict).toEqual({ is: 'shifted', lies: 'behind' });
    expect(checkEntered(shotsOf([1, -1, 0, 1]), sure(60), DEPTH)?.verdict).toEqual({ is: 'shifted', lies: 'in front' });
  });

  test('asks for more where the shots scatter too much, and for four at least', () => {
    expect(checkEntered(shotsOf([0]), null, DEPTH)?.verdict).toEqual({ is: 'not enough', more: 3 });
    expect(checkEntered(shotsOf([40, -40, -45, 38]), null, DEPTH)?.verdict).toMatchObject({ is: 'not enough' });
    expect(checkEntered([], null, DEPTH)).toBeNull();
  });

  test('tells what comes from the way focus was thrown off apart from the scatter', () => {
    const check = checkEntered(shotsOf([10, -10, 11, -11, 9, -9], 0.1), null, DEPTH);
    // Worked by hand: means 10 and -10, four degrees of freedom, squares 2 + 2.
    expect(check).toMatchObject({ repeatability: 1, nearLessFar: { value: 20 }, bias: { value: 0 } });
    expect(check?.nearLessFar?.high).toBeCloseTo(20 + 2.776 * Math.sqrt(2 / 3), 2);
  });

  test('of two shots thrown off the same way knows their scatter already', () => {
    const two = (doubt: number) =>
      checkEntered(
        [3, 5].map((value) => ({ thrown: 'near', error: sure(value, doubt) })),
        null,
        DEPTH,
      );
    // Squares 1 + 1 by one degree of freedom; the quantile of Student's t is 12.706.
    expect(two(0.1)?.repeatability).toBeCloseTo(Math.SQRT2, 9);
    expect(two(0.1)?.bias.value).toBe(4);
    expect(two(0.1)?.bias.high).toBeCloseTo(4 + 12.706 * Math.SQRT2 * Math.SQRT1_2, 2);
    expect(two(2)?.repeatability).toBeCloseTo(2, 3);
    expect(two(0.1)?.nearLessFar).toBeNull();
    const one = checkEntered([{ thrown: 'far', error: sure(3, 0.5) }], null, DEPTH);
    expect([one?.repeatability, one?.bias.low, one?.bias.high, one?.nearLessFar]).toEqual([expect.closeTo(0.5, 3), -Infinity, Infinity, null]);
  });

  test('hardly ever confirms a value that is off by more than half the depth of field, however the shots scatter', () => {
    const random = seededRandom(11);
    let wrong = 0;
    for (let run = 0; run < 4000; run += 1) {
      const scatter = 50 * (0.05 + 1.5 * random());
      const values = Array.from({ length: 4 + 2 * (run % 3) }, () => 51 + normal(random, 0, scatter));
      if (checkEntered(shotsOf(values), sure(normal(random, 0, 1)), DEPTH)?.verdict.is === 'confirmed') wrong += 1;
    }
    expect(wrong / 4000).toBeLessThanOrEqual(0.005);
  });
});

describe('a focus error', () => {
  test('behind the target takes a negative correction, worth its share of the depth', () => {
    const error = focusErrorOf({ value: 25, low: 20, high: 30 }, DEPTH, { from: 'estimate', step: millimetres(5) });
    expect(error).toMatchObject({ share: 0.5, toAdd: { value: -5, low: -6, high: -4 } });
  });

  test('in steps that were measured is as unsure as both together, and none where a step may be worth nothing', () => {
    const step = { value: 5, low: 4, high: 6 };
    expect(focusErrorOf({ value: 0, low: -6, high: 6 }, DEPTH, { from: 'bracket', step }).toAdd).toMatchObject({ low: -1.5, high: 1.5 });
    expect(focusErrorOf({ value: 5, low: 4, high: 6 }, DEPTH, { from: 'bracket', step: { ...step, low: -1 } }).toAdd).toBeNull();
  });
});
