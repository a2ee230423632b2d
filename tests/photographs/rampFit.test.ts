// Contract of the depth that blur along a ramp tells: from readings that are made by the thin lens itself it comes back, with its interval, and
// what fits nothing is left aside.
import { describe, expect, test } from 'vitest';
import { blurAtDepth, blurVariances } from '../../src/photographs/blurAtDepth.ts';
import { defocusSquare, discSwell, growthOf } from '../../src/photographs/defocusModel.ts';
import type { RampReading } from '../../src/photographs/followedEdge.ts';
import { fitRamp } from '../../src/photographs/rampFit.ts';

const DISTANCE = 1000;
const GROWTH = 4000;
const EXPECTED = { distance: DISTANCE, growth: GROWTH };
const QUESTION = { ...EXPECTED, from: -60, to: 60 };

/** Blurred everywhere by so much, upright and level, and more with depth about the focus. */
function readings(focus: number, { upright = 1, level = 1.5, growth = GROWTH, uncertain = 0.01 } = {}): RampReading[] {
  return Array.from({ length: 24 }, (_, at) => {
    const depth = -60 + 5 * at;
    const runs = at % 2 === 0 ? 'upright' : 'level';
    const constant = runs === 'upright' ? upright : level;
    const disc = growth * defocusSquare(depth, focus, DISTANCE);
    return { depth, runs, spread: Math.sqrt(constant + disc * discSwell(disc, constant)), uncertain } as RampReading;
  });
}

describe('the model', () => {
  test('is a disc by the thin lens, a quarter of it as the spread of a line', () => {
    // f² / (N (s - f)): 100² / (2 times 900) = 5.5556 mm, over a pitch of 0.005: 1111.1 pixels; squared, over 16.
    expect(growthOf({ focalLength: 100, aperture: 2, distance: 1000, pitch: 0.005 } as never)).toBeCloseTo(1111.1111 ** 2 / 16, 0);
    expect(defocusSquare(10, -10, 990)).toBeCloseTo(0.0004, 12);
    expect(discSwell(1.6, 1)).toBeCloseTo(1.14, 9);
    expect(discSwell(0.08, -3)).toBeCloseTo(1.14, 9);
  });

  test('takes readings as variances, with what the fit and the model doubt', () => {
    const blurs = blurVariances([{ depth: 3, runs: 'level', spread: 2, uncertain: 0.04 } as RampReading]);
    expect([blurs.count, blurs.depth[0], blurs.group[0], blurs.value[0]]).toEqual([1, 3, 1, 4]);
    // 2 times 2 times 0.04 and 0.04 times 4: both 0.16.
    expect(blurs.doubt[0]).toBeCloseTo(0.16 * Math.SQRT2, 9);
  });

  test('at the right depth gives back the constants and the growth, and hardly any loss; elsewhere more', () => {
    const blurs = blurVariances(readings(7));
    const at = blurAtDepth(blurs, EXPECTED, 7, 1)!;
    expect(at.constants[0]).toBeCloseTo(1, 2);
    expect(at.constants[1]).toBeCloseTo(1.5, 2);
    expect(at.growth / GROWTH).toBeCloseTo(1, 2);
    expect(at.loss).toBeLessThan(0.01);
    for (const focus of [-3, 4, 10, 20]) expect(blurAtDepth(blurs, EXPECTED, focus, 1)!.loss).toBeGreaterThan(at.loss + 1);
  });

  test('counts a growth that is off by 0.3 of it as one standard deviation', () => {
    const faster = readings(7, { growth: 1.3 * GROWTH });
    const at = blurAtDepth(blurVariances(faster), EXPECTED, 7, 1)!;
    expect(at.growth / GROWTH).toBeCloseTo(1.3, 1);
    expect(at.loss).toBeGreaterThan(0.35);
    expect(at.loss).toBeLessThan(0.55);
  });

  test('is none where blur does not grow', () => {
    expect(
      blurAtDepth(blurVariances(readings(0).map((one) => ({ ...one, spread: 3 - one.spread / 9 }))), { distance: DISTANCE, growth: 1e-6 }, 0, 1)?.growth ?? 0,
    ).toBeLessThan(1e-5);
  });
});

describe('the depth', () => {
  test.each([-20, 0, 7.3, 31])('%s mm is found, with an interval around it', (focus) => {
    const fit = fitRamp(readings(focus), QUESTION)!;
    expect(fit.focus).toBeCloseTo(focus, 1);
    expect(fit.low).toBeLessThan(focus);
    expect(fit.high).toBeGreaterThan(focus);
    expect(fit.high - fit.low).toBeLessThan(6);
    expect(fit.least.upright).toBeCloseTo(1, 1);
    expect(fit.least.level).toBeCloseTo(1.5, 1);
    expect(fit.growth).toBeCloseTo(1, 1);
    expect(fit.unrest).toBe(1);
  });

  test('is less sure the less sure its readings are', () => {
    const width = (uncertain: number): number => {
      const fit = fitRamp(readings(0, { uncertain }), QUESTION)!;
      return fit.high - fit.low;
    };
    expect(width(0.2)).toBeGreaterThan(2 * width(0.05));
  });

  test('does not move for one reading that fits nothing', () => {
    const wild = readings(7.3).map((one, at) => (at === 5 ? { ...one, spread: 9 } : one));
    expect(fitRamp(wild, QUESTION)!.focus).toBeCloseTo(7.3, 1);
  });

  test('has no level blur where no edge runs level', () => {
    const upright = readings(0).filter(({ runs }) => runs === 'upright');
    expect(fitRamp(upright, QUESTION)?.least).toEqual({ upright: expect.closeTo(1, 1), level: null });
    const level = readings(0).filter(({ runs }) => runs === 'level');
    expect(fitRamp(level, QUESTION)?.least).toEqual({ upright: null, level: expect.closeTo(1.5, 1) });
  });

  test('wants eight readings', () => {
    expect(fitRamp(readings(0).slice(4, 11), QUESTION)).toBeNull();
    expect(fitRamp(readings(0).slice(4, 12), QUESTION)).not.toBeNull();
  });

  test('ends where the question ends', () => {
    const fit = fitRamp(readings(55, { uncertain: 0.5 }), QUESTION)!;
    expect(fit.high).toBe(60);
    expect(fitRamp(readings(-55, { uncertain: 0.5 }), QUESTION)!.low).toBe(-60);
  });

  test('has its interval where the fit is worse by half the square of Student’s t, to a hundredth', () => {
    const told = readings(7.3, { uncertain: 0.05 });
    const fit = fitRamp(told, QUESTION)!;
    const lossAt = (focus: number): number =>
      blurAtDepth(blurVariances(told), EXPECTED, focus, 1)!.loss - blurAtDepth(blurVariances(told), EXPECTED, fit.focus, 1)!.loss;
    // Of 24 readings less four: 2.086.
    for (const end of [fit.low, fit.high]) expect(lossAt(end) / (2.086 ** 2 / 2)).toBeCloseTo(1, 2);
  });
});
