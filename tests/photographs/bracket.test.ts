import { describe, expect, test } from 'vitest';
import { bracketOrder, measureBracket, type BracketShot } from '../../src/photographs/bracket.ts';
import type { WithInterval } from '../../src/photographs/withInterval.ts';
import { joinCentres } from '../../src/photographs/joinedCentre.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';
import { steps } from '../../src/units.ts';

const CORRECTIONS = [-8, -4, 0, 4, 8].map(steps);
const sure = (value: number, doubt = 0.5): WithInterval => ({ value, low: value - 1.96 * doubt, high: value + 1.96 * doubt });

/** Two shots at each correction: 10 mm a step, none at the centre, a scatter in steps. */
function shots(centre: number, scatter: number, seed: number, slope = 10): BracketShot[] {
  const random = seededRandom(seed);
  return bracketOrder(CORRECTIONS, 2).map((correction) => ({ correction, error: sure(slope * (correction - centre) + 10 * normal(random, 0, scatter)) }));
}

describe('a bracket of corrections', () => {
  test('gives the step and the centre of shots that lie on a line', () => {
    const measured = measureBracket(shots(2.5, 0, 1), null);
    expect(measured).toMatchObject({ ok: true, value: { step: { value: expect.closeTo(10, 9) }, centre: { value: expect.closeTo(2.5, 9) }, apart: [] } });
  });

  test('counts from the live-view reference where there is one', () => {
    const measured = measureBracket(shots(2.5, 0, 1), sure(10));
    expect(measured).toMatchObject({ ok: true, value: { centre: { value: expect.closeTo(3.5, 9) } } });
  });

  test('states intervals that hold the truth in about 95 of a hundred', () => {
    let [centres, slopes] = [0, 0];
    for (let seed = 0; seed < 1000; seed += 1) {
      const measured = measureBracket(shots(1.3, 0.6, seed), null);
      if (!measured.ok) continue;
      const { centre, step } = measured.value;
      if (centre.low <= 1.3 && centre.high >= 1.3) centres += 1;
      if (step.low <= 10 && step.high >= 10) slopes += 1;
    }
    expect(centres).toBeGreaterThanOrEqual(930);
    expect(slopes).toBeGreaterThanOrEqual(930);
  });

  test('is not bent by one shot that missed, and names it', () => {
    const missed = shots(0, 0.2, 3).map((shot, index) => (index === 4 ? { ...shot, error: sure(400) } : shot));
    const measured = measureBracket(missed, null);
    expect(measured).toMatchObject({ ok: true, value: { apart: [4] } });
    expect(Math.abs(measured.ok ? measured.value.centre.value : NaN)).toBeLessThan(0.4);
  });

  test('gives no number where the correction moves nothing, moves the wrong way, or there are too few shots', () => {
    expect(measureBracket(shots(0, 1, 4, 0), null)).toEqual({ ok: false, fault: { is: 'no slope' } });
    expect(measureBracket(shots(0, 0.2, 5, -10), null)).toEqual({ ok: false, fault: { is: 'runs backwards' } });
    expect(measureBracket(shots(0, 0.2, 6).slice(0, 3), null)).toEqual({ ok: false, fault: { is: 'too few shots' } });
  });

  test('is shot in an order in which an even drift falls on every correction alike', () => {
    const order = bracketOrder(CORRECTIONS, 2);
    expect(order).toHaveLength(10);
    for (const correction of CORRECTIONS) {
      const places = order.flatMap((each, place) => (each === correction ? [place] : []));
      expect(places.reduce((sum, place) => sum + place, 0)).toBe(9);
    }
  });
});

describe('two centres of one situation', () => {
  test('agree where their difference may be chance, and are joined by their variances', () => {
    // Worked by hand: variances 1 and 1/4, so the mean is (0 · 1/4 + 1 · 1) / (5/4), its variance 1/5.
    const joined = joinCentres(sure(0, 1), sure(1, 0.5));
    expect(joined).toMatchObject({ is: 'agree', joint: { value: expect.closeTo(0.8, 3), high: expect.closeTo(0.8 + 1.96 * Math.sqrt(0.2), 3) } });
  });

  test('differ where chance does not explain it, and no joint value is given', () => {
    const joined = joinCentres(sure(0, 0.5), sure(-4, 0.5));
    expect(joined).toMatchObject({ is: 'differ', difference: { value: -4 } });
    expect(joined).not.toHaveProperty('joint');
  });
});
