// Contract of the drift over months: the line agrees with a published regression, what is stated of it is true as often as it
// says, and where too little was measured nothing is stated.
import { describe, expect, test } from 'vitest';
import { centreAt, trendOf } from '../../src/logbook/trend.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { moment, steps } from '../../src/units.ts';

const DAY = 86_400_000;
const sweepOn = (day: number, centre: number, half = 0.3) => ({
  at: moment(day * DAY),
  centre,
  interval: { from: centre - half, to: centre + half },
  low: steps(-50),
  high: steps(50),
});

describe('the trend of a centre', () => {
  test('where the sweeps scatter far more than their own intervals, it is the plain regression that was published', () => {
    // F. J. Anscombe (1973, Am. Stat. 27:17), first set: slope 0.5, its standard error 0.118, 9 degrees of freedom (t 2.262 from memory).
    const x = [10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5];
    const y = [8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68];
    const trend = trendOf(x.map((at, index) => sweepOn(at * 30, y[index]!)))!;
    expect(trend.moved.value / 10).toBeCloseTo(0.5, 3);
    expect((trend.moved.to - trend.moved.value) / 10).toBeCloseTo(2.262 * 0.118, 2);
    expect(centreAt(trend, 9 * 30 * DAY).value).toBeCloseTo(7.5, 2);
  });

  test('sweeps that lie on one line still leave the doubt of their own intervals', () => {
    const { moved } = trendOf([0, 100, 200, 300].map((day) => sweepOn(day, day / 100)))!;
    expect(moved.value).toBeCloseTo(3, 6);
    expect(moved.to - moved.from).toBeGreaterThan(1);
  });

  test('a surer sweep draws the line towards itself', () => {
    const at = (half: number) => centreAt(trendOf([sweepOn(0, 0), sweepOn(100, 0), sweepOn(200, 0), sweepOn(300, 2, half)])!, 300 * DAY).value;
    expect(at(0.3)).toBeGreaterThan(at(4));
  });

  test.each([
    { sweeps: 4, between: 0 },
    { sweeps: 4, between: 1 },
    { sweeps: 6, between: 0.5 },
    { sweeps: 10, between: 1 },
  ])('with $sweeps sweeps and $between steps between them, the stated interval holds the true drift 95 times in 100 or more often', ({ sweeps, between }) => {
    const random = seededRandom(20_260_301 + sweeps * 10 + between * 4);
    const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const runs = 1500;
    let held = 0;
    for (let run = 0; run < runs; run += 1) {
      const drawn = Array.from({ length: sweeps }, (_, index) => {
        const [day, sd] = [(index + 0.8 * random()) * 60, 0.3 + 0.5 * random()];
        const centre = 2 + day / 200 + between * normal() + sd * normal();
        return sweepOn(day, centre, 1.96 * sd);
      });
      const { moved, from, to } = trendOf(drawn)!;
      const truly = (to - from) / DAY / 200;
      if (moved.from <= truly && truly <= moved.to) held += 1;
    }
    // Three standard errors of so many runs below 0.95.
    expect(held / runs).toBeGreaterThan(0.95 - 3 * Math.sqrt((0.95 * 0.05) / runs));
  });

  test('a drift is told from none, and neither is stated where the line tells neither', () => {
    const [low, high] = [steps(-2), steps(2)];
    const told = (centres: readonly number[]) => trendOf(centres.map((centre, index) => ({ ...sweepOn(index * 100, centre), low, high })))?.tells;
    expect(told([0, 1, 2, 3])).toBe('drift');
    expect(told([1, 1.5, 1, 1.5, 1, 1.5])).toBe('none');
    expect(told([-1, 4, -2, 3])).toBeUndefined();
  });

  test('nothing is stated of three sweeps, of values put in by hand, or of less than two weeks', () => {
    const year = [0, 120, 240, 360];
    expect(trendOf(year.slice(1).map((day) => sweepOn(day, 1)))).toBeNull();
    expect(trendOf(year.map((day) => ({ ...sweepOn(day, 1), interval: null })))).toBeNull();
    expect(trendOf([0, 2, 4, 6, 8].map((day) => sweepOn(day, 1)))).toBeNull();
  });
});
