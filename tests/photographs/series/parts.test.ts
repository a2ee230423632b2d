import { describe, expect, test } from 'vitest';
import { bracketOrder } from '../../../src/photographs/bracket.ts';
import { bracketParts, type BracketPart } from '../../../src/photographs/series/bracketParts.ts';
import { bracketPlan } from '../../../src/photographs/series/bracketPlan.ts';
import { checkParts, type CheckPart } from '../../../src/photographs/series/checkParts.ts';
import { USUAL_SCALE } from '../../../src/sweep/scale.ts';
import { steps } from '../../../src/units.ts';

const ids = (count: number): string[] => Array.from({ length: count }, (_, at) => `p${at}`);

describe('what each picture of a check is', () => {
  const partsOf = (count: number, told: readonly (readonly [string, CheckPart])[] = []) => [...checkParts(ids(count), new Map(told)).values()];

  test('goes by the order that is said beforehand: live view first, then near and far by turns', () => {
    expect(partsOf(5)).toEqual(['live view', 'near', 'far', 'near', 'far']);
  });

  test('goes on from what the person said of one picture', () => {
    expect(partsOf(4, [['p0', 'near']])).toEqual(['near', 'far', 'near', 'far']);
    expect(partsOf(5, [['p2', 'near']])).toEqual(['live view', 'near', 'near', 'far', 'near']);
  });

  test('keeps the turn of a picture that is left out, and of one in live view in between', () => {
    expect(partsOf(5, [['p2', 'left out']])).toEqual(['live view', 'near', 'left out', 'near', 'far']);
    expect(partsOf(5, [['p2', 'live view']])).toEqual(['live view', 'near', 'live view', 'far', 'near']);
  });
});

describe('which correction each picture of a bracket was taken at', () => {
  const ORDER = [-4, 4, 0, 0, 4, -4].map(steps);
  const partsOf = (count: number, told: readonly (readonly [string, BracketPart])[] = []) => [...bracketParts(ids(count), ORDER, new Map(told)).values()];

  test('goes by the order that is said beforehand, after the one in live view', () => {
    expect(partsOf(7)).toEqual(['live view', ...ORDER]);
  });

  test('as many pictures as corrections mean that none was focused in live view', () => {
    expect(partsOf(6)).toEqual(ORDER);
  });

  test('goes on behind a shot that was missed once the person says so, and behind one that was taken twice', () => {
    expect(partsOf(5, [['p1', steps(4)]])).toEqual(['live view', 4, 0, 0, 4]);
    expect(partsOf(8, [['p2', steps(-4)]])).toEqual(['live view', -4, -4, 4, 0, 0, 4, -4]);
  });

  test('a picture that is left out keeps its turn, and what comes after the last turn counts for nothing until it is told', () => {
    expect(partsOf(8, [['p1', 'left out']])).toEqual(['live view', 'left out', 4, 0, 0, 4, -4, 'left out']);
  });
});

describe('the corrections of a bracket', () => {
  test('are five, four steps of the usual scale apart, around the value, two shots each', () => {
    expect(bracketPlan(USUAL_SCALE, steps(2))).toEqual(bracketOrder([-6, -2, 2, 6, 10].map(steps), 2));
  });

  test('stay on the scale and as far apart where the value is near its end', () => {
    expect(new Set(bracketPlan(USUAL_SCALE, steps(19)))).toEqual(new Set([4, 8, 12, 16, 20]));
    expect(new Set(bracketPlan(USUAL_SCALE, steps(-20)))).toEqual(new Set([-20, -16, -12, -8, -4]));
  });

  test('are values that the body has, on a short scale and on a coarse one', () => {
    const short = { min: steps(-10), max: steps(10), step: 1 };
    expect(new Set(bracketPlan(short, steps(0)))).toEqual(new Set([-4, -2, 0, 2, 4]));
    const coarse = { min: steps(-6), max: steps(6), step: 3 };
    expect(new Set(bracketPlan(coarse, steps(3)))).toEqual(new Set([-6, -3, 0, 3, 6]));
    const three = { min: steps(-5), max: steps(5), step: 5 };
    expect(new Set(bracketPlan(three, steps(0)))).toEqual(new Set([-5, 0, 5]));
  });
});
