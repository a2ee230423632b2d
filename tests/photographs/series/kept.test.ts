// Numbers of a series, from its shots to what is told, kept so that no change of them goes unnoticed.
import { expect, test } from 'vitest';
import { fNumber } from '../../../src/optics/quantity.ts';
import { bracketOrder, measureBracket, type BracketShot } from '../../../src/photographs/bracket.ts';
import { changedSize } from '../../../src/photographs/changedSize.ts';
import { checkEntered, type CheckShot } from '../../../src/photographs/checkEntered.ts';
import { growthOf, defocusSquare, discSwell } from '../../../src/photographs/defocusModel.ts';
import { focusErrorOf } from '../../../src/photographs/focusError.ts';
import { joinCentres } from '../../../src/photographs/joinedCentre.ts';
import { bracketPlan } from '../../../src/photographs/series/bracketPlan.ts';
import { liveViewReference } from '../../../src/photographs/series/liveViewReference.ts';
import { studentQuantile } from '../../../src/photographs/studentT.ts';
import { around, NORMAL_MARGIN } from '../../../src/photographs/withInterval.ts';
import { normal, seededRandom } from '../../../src/practice/random.ts';
import { millimetres, steps } from '../../../src/units.ts';
import { kept } from '../../kept/kept.ts';

const depthOf = (front: number, behind: number | 'infinite') => ({
  front: millimetres(front),
  behind: behind === 'infinite' ? behind : millimetres(behind),
  total: behind === 'infinite' ? behind : millimetres(front + behind),
});
/** So many standard deviations of one to either side. */
const sure = (value: number, doubt: number) => around(value, NORMAL_MARGIN * doubt);

test('checks of the value entered, from one shot to many, with and without a reference', () => {
  const told = () => {
    const random = seededRandom(31);
    return Array.from({ length: 72 }, (_, set) => {
      const count = 1 + (set % 12);
      const scatter = [0.4, 3, 9][set % 3]!;
      const shots = Array.from({ length: count }, (_each, at): CheckShot => ({
        thrown: set % 7 === 6 || at % 2 === 0 ? 'near' : 'far',
        error: sure([0, 4, -7, 16, -22][set % 5]! + (at % 2) + normal(random, 0, scatter), set % 4 === 3 ? 4 : 0.5),
      }));
      const told = checkEntered(shots, [null, sure(1.5, 0.3), sure(-4, 3)][set % 3]!, depthOf(20, set % 8 === 7 ? 'infinite' : 30));
      return told && [[...Object.values(told.bias), told.repeatability, ...Object.values(told.nearLessFar ?? {})], Object.values(told.verdict)];
    });
  };
  expect(kept(told)).toMatchSnapshot();
});

/** Shots that scatter by nothing, and are measured exactly but for this. */
const shotsAt = (errors: readonly number[], doubt: number): CheckShot[] =>
  errors.map((value, at) => ({ thrown: at % 2 === 0 ? 'near' : 'far', error: sure(value, doubt) }));

test('checks of shots that agree exactly: at the tolerated share, at none, and beside it', () => {
  const verdict = (errors: readonly number[], depth = depthOf(20, 20), reference: number | null = null) => {
    const told = checkEntered(shotsAt(errors, 0), reference === null ? null : sure(0, reference), depth);
    return told && Object.values(told.verdict);
  };
  const told = () => [
    [10, 10.001, 9.999, -10, -10.001, -9.999, 0, 1e-7, -1e-7].map((each) => verdict([each, each, each, each])),
    [4, 12].map((each) => [[each], [each, each], [each, each, each]].map((errors) => verdict(errors))),
    [0.4, 4, 5.102, 6].map((reference) => [0, 0, 0, 0].map((_, more) => verdict(Array.from({ length: 2 + more }, () => 0.1), depthOf(20, 20), reference))),
    checkEntered([], null, depthOf(1, 1)),
  ]; // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('how many more shots are asked for, from none but one to the most', () => {
  const told = () =>
    [0, 5, 8, 10, 14].map((mean) =>
      [0.5, 2, 4, 8, 20].map((scatter) =>
        [1, 2, 3, 4, 5, 6].map((count) => {
          const verdict = checkEntered(
            shotsAt(
              Array.from({ length: count }, (_, at) => mean + (at % 4 < 2 ? scatter : -scatter)),
              scatter,
            ),
            null,
            depthOf(20, 20),
          )!.verdict;
          return verdict.is === 'not enough' ? verdict.more : -1;
        }),
      ),
    );
  expect(kept(told)).toMatchSnapshot();
});

test('what ends exactly at the target, or at the tolerated share, is not beyond it', () => {
  const verdict = (errors: readonly number[], depth: number, reference: Parameters<typeof checkEntered>[1] = null) =>
    checkEntered(shotsAt(errors, 3), reference, depthOf(depth, depth))?.verdict;
  const four = (value: number) => [value, value, value, value];
  const margin = checkEntered(shotsAt(four(0), 3), null, depthOf(20, 20))?.bias.high ?? 0;
  for (const value of [margin, -margin]) expect(verdict(four(value), 4)).toMatchObject({ is: 'not enough' });
  for (const value of [margin, -margin]) expect(verdict(four(1.01 * value), 4)).toMatchObject({ is: 'shifted' });
  expect(verdict(four(-0.95 * margin), 4)).toMatchObject({ is: 'not enough' });
  // Three shots, and what a fourth would make of them.
  const [, doubt] = [0, Math.sqrt([3, 3, 3].map((each) => ((2 * NORMAL_MARGIN * each) / (2 * NORMAL_MARGIN)) ** 2).reduce((sum, each) => sum + each, 0) / 3)];
  const withFourth = studentQuantile(0.975, 2) * Math.sqrt(doubt ** 2 / 4);
  const three = (value: number) => [value, value, value];
  for (const way of [1, -1]) {
    expect(verdict(three(way * withFourth), 4)).not.toEqual({ is: 'not enough', more: 1 });
    expect(verdict(three(way * 1.001 * withFourth), 4)).toEqual({ is: 'not enough', more: 1 });
    expect(verdict(three(way), 2 * (1 + withFourth))).toEqual({ is: 'not enough', more: 1 });
  }
});

test('where one way has one shot alone, more are wanted than the count lets expect', () => {
  const shots = [12, 10, 14, 11, 13, 12].map((value, at): CheckShot => ({ thrown: at === 0 ? 'near' : 'far', error: sure(value, 9) }));
  const told = () => [8, 10, 11, 12, 13, 14, 15].map((less) => checkEntered(shots, sure(less - 6, 0), depthOf(4, 4))?.verdict);
  expect(kept(told)).toMatchSnapshot();
});

test('a bracket of which nothing moves has no slope', () => {
  const shots = [0, 4, 8, 12].map((correction): BracketShot => ({ correction: steps(correction), error: sure(0, 0) }));
  expect(measureBracket(shots, null)).toEqual({ ok: false, fault: { is: 'no slope' } });
});

test('shots count less and less the farther off they lie', () => {
  const told = () =>
    Array.from({ length: 60 }, (_, off) => {
      const shots = [0, 2, -1, 1, 3, 0, -2].map((error, at): BracketShot => ({
        correction: steps(4 * at),
        error: sure(20 * at + error + (at === 3 ? off / 3 : 0), 2),
      }));
      const told = measureBracket(shots, null);
      return told.ok ? told.value.apart.length : -1;
    });
  expect(kept(told)).toMatchSnapshot();
});

test('brackets of shots, steep and flat, with one far off, with and without a reference', () => {
  const told = () => {
    const random = seededRandom(32);
    return Array.from({ length: 40 }, (_, set) => {
      const shots = Array.from({ length: 3 + (set % 8) }, (_each, at): BracketShot => ({
        correction: steps(4 * (at % 5) - 8 + (set % 4)),
        error: sure([3, 1, 0.2, -2][set % 4]! * (4 * (at % 5) - 6) + normal(random, 0, 1) + (at === 2 ? 2 * (set % 11) : 0), set % 3 === 2 ? 2 : 0.4),
      }));
      const told = measureBracket(shots, set % 2 === 0 ? null : sure(2, 0.7));
      if (!told.ok) return told.fault.is;
      const { step, centre, scatter, atZero, lineAt, apart } = told.value;
      return [...Object.values(step), ...Object.values(centre), scatter, atZero, ...[-10, 0, 7].flatMap((x) => Object.values(lineAt(x))), ...apart];
    });
  };
  expect(kept(told)).toMatchSnapshot();
});

test('in which order to shoot, and what the scale allows of it', () => {
  const scale = (min: number, max: number, step: number) => ({ min: steps(min), max: steps(max), step });
  const told = () => [
    [0, 1, 2, 5, 6].map((count) => [0, 1, 2, 3].map((rounds) => bracketOrder(Array.from({ length: count }, (_, at) => steps((7 * at) % 11)), rounds))),
    [scale(-20, 20, 1), scale(-10, 10, 1), scale(-20, 20, 5), scale(-3, 3, 1), scale(-2, 2, 1), scale(-1, 1, 1), scale(0, 12, 1), scale(-30, 30, 1), scale(-2, 1, 1)].map((one) =>
      [-30, -20, -13, -7, -1, 0, 1, 2, 6, 12, 19, 20].map((value) => bracketPlan(one, steps(value))),
    ),
  ]; // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('what pictures in live view say together', () => {
  const told = () => [
    liveViewReference([]),
    liveViewReference([sure(3, 1)]),
    liveViewReference([sure(3, 1), sure(5, 2)]),
    liveViewReference([sure(3, 0.1), sure(5, 0.2), sure(10, 0.1)]),
  ];
  expect(kept(told)).toMatchSnapshot();
});

test('two centres that agree, differ, or do either by a hair', () => {
  const pairs = [[0, 1, 1, 2], [0, 1, 9, 1], [9, 1, 0, 2], [2, 0, 2, 0], [2, 0, 3, 0], [3, 0, 2, 0], [1, 0, 1, 2], [0, 3, 4, 4], [0, 1, 1, 1], [0, 0, -1e-9, 0]] as const; // prettier-ignore
  const told = () => pairs.map(([band, bandDoubt, bracket, bracketDoubt]) => joinCentres(sure(band, bandDoubt), sure(bracket, bracketDoubt)));
  expect(kept(told)).toMatchSnapshot();
  // Neither end of the difference lies beyond nothing: exactly there, they agree.
  expect(joinCentres({ value: 0, low: -1, high: 1 }, { value: 1, low: 1, high: 1 }).is).toBe('agree');
  expect(joinCentres({ value: 1, low: 0, high: 2 }, { value: 0, low: 0, high: 0 }).is).toBe('agree');
  // Of two that are as sure, the middle.
  expect(joinCentres({ value: 0, low: -1, high: 1 }, { value: 1, low: 0, high: 2 })).toMatchObject({ joint: { value: 0.5 } });
});

test('a focus error as a share of the depth and as steps', () => {
  const told = () =>
    [
      around(3, 1),
      around(-3, 1),
      around(0.2, 0.5),
      around(0.9, 0.5),
      around(0.5, 2),
      around(0, 0),
      { value: 1, low: 0, high: 2 },
      { value: -1, low: -2, high: 0 },
    ].map((error) => [
      focusErrorOf(error, depthOf(20, 30), { from: 'estimate', step: millimetres(2) }),
      focusErrorOf(error, depthOf(20, 'infinite'), { from: 'bracket', step: { value: 2, low: 1, high: 4 } }),
      focusErrorOf(error, depthOf(20, 30), { from: 'bracket', step: { value: 2, low: 0, high: 4 } }).toAdd,
      focusErrorOf(error, depthOf(20, 30), { from: 'bracket', step: { value: 2, low: 0.5, high: 4 } }).toAdd,
    ]);
  expect(kept(told)).toMatchSnapshot();
});

test('how blur grows with depth, and how a disc swells', () => {
  const optics = { focalLength: millimetres(85), aperture: fNumber(1.8), distance: millimetres(2000), pitch: millimetres(0.006) };
  const told = () => [
    growthOf(optics),
    [[10, 4], [-10, 4], [0, 0]].map(([depth = 0, focus = 0]) => defocusSquare(depth, focus, 900)),
    [[1, 2], [3, 0.01], [3, 0.05], [3, 0.07], [0, 1]].map(([disc = 0, rest = 0]) => discSwell(disc, rest)),
  ]; // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});

test('a size that is another one by one part in a hundred is told, less is not', () => {
  const size = (width: number, height: number) => ({ width, height });
  const told = () =>
    [[6000, 4000], [4000, 6000], [3000, 2000], [5940, 3960], [5930, 3950], [6060, 4040], [6070, 4050], [6000, 3960], [6000, 3950], [6000, 4045], [5900, 4000], [12000, 4000]].map(
      ([width = 1, height = 1]) => Object.values(changedSize(size(6000, 4000), size(width, height))),
    ); // prettier-ignore
  expect(kept(told)).toMatchSnapshot();
});
