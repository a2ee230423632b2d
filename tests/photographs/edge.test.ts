// The slanted edge, measured on edges whose truth is known in closed form: the transform of a Gaussian times that of a square pixel.
import { describe, expect, it } from 'vitest';
import { measureEdge } from '../../src/photographs/edge.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { fault, value } from '../optics/value.ts';
import { renderEdge, trueHalf, USUAL_EDGE, type SlantedEdge } from './slantedEdge.ts';

const measure = (edge: Partial<SlantedEdge>) => {
  const { plane, place } = renderEdge(edge);
  return measureEdge(plane, place, seededRandom(1));
};
const off = (edge: Partial<SlantedEdge>): number => value(measure(edge)).mtf50 / trueHalf({ ...USUAL_EDGE, ...edge }) - 1;

describe('the sharpness of a slanted edge', () => {
  const SIGMAS = [0.5, 0.7, 1, 1.5, 2, 3];

  it.each(SIGMAS.flatMap((sigma) => [4, 5, 6, 7].map((angle) => [sigma, angle] as const)))(
    'is within 1.5 % of the truth at a blur of %f px and %f° (E52)',
    (sigma, angle) => {
      expect(Math.abs(off({ sigma, angle }))).toBeLessThan(0.015);
    },
  );

  it.each([0.28, 0.5, 2, 4, 6.2])('is within 1.5 % at a blur of %f px all over the angles that are taken, on edges of any direction', (sigma) => {
    for (const angle of [2.2, -3, 6.5, -9, 11.3, -14.5]) {
      for (const runs of ['upright', 'level'] as const) {
        const edge = { sigma, angle, runs, levels: angle > 0 ? ([0.6, 0.05] as const) : ([0.05, 0.6] as const), across: 220 };
        expect(Math.abs(off(edge)), `${angle} ${runs}`).toBeLessThan(0.015);
      }
    }
  });

  it('is told with the angle of the edge to 0.01°, clockwise as seen', () => {
    for (const runs of ['upright', 'level'] as const) {
      for (const angle of [-7, -4.5, 3, 5, 12]) {
        const told = value(measure({ angle, runs, sigma: 0.8 }));
        expect(told.runs).toBe(runs);
        expect(Math.abs(told.angle - angle)).toBeLessThan(0.01);
      }
    }
  });

  it('does not depend on where the edge was said to be, within six pixels', () => {
    const { plane, place } = renderEdge({ sigma: 1.2 });
    const exact = value(measureEdge(plane, place, seededRandom(1))).mtf50;
    for (const [above, below] of [
      [4, 4],
      [-6, -6],
      [3, -3],
      [-5, 2],
    ] as const) {
      const moved = { from: { ...place.from, x: place.from.x + above }, to: { ...place.to, x: place.to.x + below } };
      expect(Math.abs(value(measureEdge(plane, moved, seededRandom(1))).mtf50 / exact - 1)).toBeLessThan(0.005);
    }
  });

  it('is the same whichever end is told first', () => {
    const { plane, place } = renderEdge({ sigma: 1.2, noise: 0.01 });
    const turned = measureEdge(plane, { from: place.to, to: place.from }, seededRandom(1));
    expect(turned).toEqual(measureEdge(plane, place, seededRandom(1)));
  });

  it('leaves out rows where something lies on the edge', () => {
    const { plane, place } = renderEdge({ sigma: 1 });
    const light = plane.light.slice();
    for (let y = 60; y < 72; y++) for (let x = 60; x < 100; x++) light[y * plane.width + x] = 0.05;
    const measured = value(measureEdge({ ...plane, light }, place, seededRandom(1)));
    expect(Math.abs(measured.mtf50 / trueHalf(USUAL_EDGE) - 1)).toBeLessThan(0.015);
  });
});

describe('an edge that tells nothing', () => {
  it('is too short under twenty rows, or under one shift by a pixel', () => {
    expect(fault(measure({ rows: 15 }))).toEqual({ is: 'edge too short', rows: 15, needed: 20 });
    expect(fault(measure({ rows: 25, angle: 2.1 }))).toMatchObject({ is: 'edge too short', needed: 28 });
  });

  it.each([0, 1, -1.5, 16, -25])('is not slanted as it must be at %f°', (angle) => {
    const told = fault(measure({ angle, rows: 120, across: 200 }));
    expect(told).toMatchObject({ is: 'edge not slanted' });
    expect(Math.abs((told as { angle: number }).angle - angle)).toBeLessThan(0.1);
  });

  it('has no contrast', () => {
    expect(fault(measure({ levels: [0.3, 0.3] }))).toEqual({ is: 'no edge' });
    expect(fault(measure({ levels: [0.3, 0.35] }))).toEqual({ is: 'no edge' });
    expect(fault(measure({ levels: [0.3, 0.5], noise: 0.1 }))).toMatchObject({ is: 'no edge' });
  });

  it('is blown on its white side, or black on the other', () => {
    const clipping = (levels: readonly [number, number]) => {
      const { plane, place } = renderEdge({ levels, noise: 0.005 });
      return measureEdge({ ...plane, light: plane.light.map((light) => Math.max(0, Math.min(1, light))) }, place, seededRandom(1));
    };
    expect(fault(clipping([0.1, 1.2]))).toEqual({ is: 'edge clipped', at: 'white' });
    expect(fault(clipping([-0.1, 0.6]))).toEqual({ is: 'edge clipped', at: 'black' });
    expect(value(clipping([0.05, 0.9])).clipped).toBe(0);
  });

  it('stands too near to another', () => {
    const { plane, place } = renderEdge({ sigma: 2 });
    const bar = renderEdge({ sigma: 2, levels: [0, 0.55], offset: 7.3 }).plane.light;
    const light = plane.light.map((one, at) => one - bar[at]!);
    expect(fault(measureEdge({ ...plane, light }, place, seededRandom(1)))).toMatchObject({ is: 'two edges' });
  });

  it('is blurred past what can be looked at', () => {
    expect(fault(measure({ sigma: 30 }))).toEqual({ is: 'edge too blurred' });
  });

  it('lies outside the picture, or at its border', () => {
    const { plane, place } = renderEdge({});
    const moved = (x: number) => ({ from: { ...place.from, x: place.from.x + x }, to: { ...place.to, x: place.to.x + x } });
    expect(fault(measureEdge(plane, moved(5000), seededRandom(1)))).toEqual({ is: 'edge outside' });
    expect(fault(measureEdge(plane, moved(75), seededRandom(1)))).toEqual({ is: 'edge outside' });
    expect(fault(measureEdge(plane, { from: { x: 1, y: -500 }, to: { x: 1, y: -10 } }, seededRandom(1)))).toMatchObject({ is: 'edge too short' });
  });
});

describe('another edge beside', () => {
  it('does not change the figure as long as it stands clear of the blur', () => {
    const { plane, place } = renderEdge({ sigma: 1 });
    const bar = renderEdge({ sigma: 1, levels: [0, 0.55], offset: 16.3 }).plane.light;
    const light = plane.light.map((one, at) => one - bar[at]!);
    expect(Math.abs(value(measureEdge({ ...plane, light }, place, seededRandom(1))).mtf50 / trueHalf(USUAL_EDGE) - 1)).toBeLessThan(0.015);
  });

  it('does not change it where it is not parallel, either, and lies in the strip that is first looked at', () => {
    const { plane, place } = renderEdge({ sigma: 0.8, rows: 46, noise: 0.005 });
    const light = plane.light.map((one, at) => (at % plane.width > 95 ? 0.05 : one));
    const measured = value(measureEdge({ ...plane, light }, place, seededRandom(1)));
    expect(Math.abs(measured.mtf50 / trueHalf({ ...USUAL_EDGE, sigma: 0.8 }) - 1)).toBeLessThan(0.03);
  });
});
