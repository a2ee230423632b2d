import { describe, expect, it } from 'vitest';
import { measureEdge, type EdgeMeasure } from '../../src/photographs/edge.ts';
import { lpPerHeight } from '../../src/photographs/lpPerHeight.ts';
import { motionIn } from '../../src/photographs/motion.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { value } from '../optics/value.ts';
import { renderEdge, type SlantedEdge } from './slantedEdge.ts';

/** Two edges each way, blurred so much across upright and across level ones. */
function picture(upright: number, level: number, given: Partial<SlantedEdge> = {}): EdgeMeasure[] {
  return ([upright, level, upright, level] as const).map((sigma, index) => {
    const { plane, place } = renderEdge({
      noise: 0.01,
      ...given,
      sigma,
      runs: index % 2 === 0 ? 'upright' : 'level',
      angle: index < 2 ? 5 : -6,
      seed: index + 1,
    });
    return value(measureEdge(plane, place, seededRandom(index)));
  });
}

describe('motion', () => {
  it('sideways blurs the upright edges, and up and down the level ones', () => {
    expect(motionIn(picture(3, 1))).toMatchObject({ is: 'moved', way: 'sideways' });
    expect(motionIn(picture(0.8, 1.6))).toMatchObject({ is: 'moved', way: 'up and down' });
  });

  it('is told with the ratio of the two', () => {
    const told = motionIn(picture(4, 2, { noise: 0.002 }));
    // Beside blurs of 4 and 2 px the pixel's own weighs little: its variance is 1/12.
    expect(told.is === 'moved' && told.ratio).toBeCloseTo(Math.sqrt((16 + 1 / 12) / (4 + 1 / 12)), 1);
  });

  it('is not told of blur that is alike both ways, nor of a difference within the intervals', () => {
    for (const sigma of [0.6, 1, 2, 4]) expect(motionIn(picture(sigma, sigma))).toEqual({ is: 'alike' });
    for (const sigma of [0.6, 1, 2]) expect(motionIn(picture(sigma, 1.15 * sigma))).toEqual({ is: 'alike' });
    const unsure = picture(1, 1.5).map((edge) => ({ ...edge, interval: { low: edge.mtf50 / 2, high: edge.mtf50 * 2 } }));
    expect(motionIn(unsure)).toEqual({ is: 'alike' });
  });

  it('cannot be told from edges of one way', () => {
    expect(motionIn(picture(1, 1).filter((edge) => edge.runs === 'level'))).toEqual({ is: 'not told' });
    expect(motionIn([])).toEqual({ is: 'not told' });
  });
});

describe('line pairs a picture height', () => {
  it('of a quarter cycle a pixel on 4000 pixels are a thousand', () => {
    expect(lpPerHeight(0.25, 4000)).toBe(1000);
  });
});
