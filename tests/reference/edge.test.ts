// The slanted edge, and what it is compared with, against published and derived numbers. Each number stands with its source in edge-values.json.
// The published regression values of one edge picture (by P. D. Burns's published program, half the contrast at 0.269805 cycles a pixel) are left out: the licence of the picture
// is not stated, so it is not kept here, and without it they check nothing.
import { describe, expect, it } from 'vitest';
import reference from './edge-values.json' with { type: 'json' };
import { measureEdge } from '../../src/photographs/edge.ts';
import { binWidth, derivativeCorrection } from '../../src/photographs/edgeTransfer.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { fault, value } from '../optics/value.ts';
import { frequencyAt, gaussianContrast, pixelContrast, renderEdge } from '../photographs/slantedEdge.ts';
import { cutOff, defocusTransfer, defocusWaves, diffractionContrast, discContrast, imageSeparation, strehl } from './opticalTransfer.ts';

/** Standard deviations of E52, in pixels. */
const BLURS = [0.5, 0.7, 1, 1.5, 2, 3];
const GREEN = 0.00055;
const lean = (angle: number): number => Math.tan((angle * Math.PI) / 180);
/** The measurement itself. */
const measured = (sigma: number, angle: number): number => {
  const { plane, place } = renderEdge({ sigma, angle });
  return value(measureEdge(plane, place, seededRandom(1))).mtf50;
};
const discHalf = (diameter: number): number => frequencyAt(0.5, (share) => discContrast(share / diameter, diameter)) / diameter;
/** Where the disc's contrast first falls to nothing. */
const discZero = (diameter: number): number => frequencyAt(0, (share) => discContrast((share * 1.5) / diameter, diameter)) * (1.5 / diameter);

const COMPUTED: Record<string, () => number[]> = {
  E50: () => [0.5, 0.3, 0.1].map((level) => frequencyAt(level, (f) => gaussianContrast(1, f))),
  E51: () => [pixelContrast(0.25), pixelContrast(0.5), frequencyAt(0.5, pixelContrast)],
  ...Object.fromEntries(BLURS.map((sigma) => [`E52_${sigma}`, () => [frequencyAt(0.5, (f) => gaussianContrast(sigma, f) * pixelContrast(f))]])),
  E53: () => [0.25, 0.5].map(derivativeCorrection),
  // The angle whose bins have the published width: the program's width of a bin, undone.
  E54: () => [90 * frequencyAt(0.248855, (quarter) => binWidth(lean(90 * quarter)))],
  E56: () => [3, 5, 7].map((angle) => 1 / lean(angle)),
  E57: () => [diffractionContrast(0.25), diffractionContrast(0.5), frequencyAt(0.5, diffractionContrast)],
  E58: () => [8, 2.8].map((n) => cutOff(n, GREEN)),
  E59: () => [discHalf(0.03), discZero(0.03)],
  E60: () =>
    [
      [0.00525, 1.4],
      [0.0105, 2.8],
      [0.021, 5.6],
    ].map(([defocus, n]) => defocusWaves(defocus!, n!, GREEN)),
  E61: () => [strehl(0.25)],
  E62: () => [0.25, 0.5].flatMap((share) => [0, 0.25, 0.5, 1].map((waves) => defocusTransfer(share, waves))),
  K5: () => [5.6, 2.8].map((baseLine) => imageSeparation(42, baseLine)),
};

describe('edges, diffraction and defocus agree with numbers from outside', () => {
  it.each(reference.checks)('$id: $quantity ($kind, $read)', ({ id, expected, tolerance }) => {
    const computed = COMPUTED[id]?.();
    expect(computed).toHaveLength(expected.length);
    for (const [index, number] of expected.entries()) {
      expect(Math.abs(computed![index]! - number), `number ${index + 1}`).toBeLessThanOrEqual(tolerance + 1e-12 * Math.abs(number));
    }
  });

  it.each(BLURS)('the measurement comes within 1.5 %% of the half of E52 at a blur of %f px, from 4° to 7°', (sigma) => {
    const [half] = reference.checks.find(({ id }) => id === `E52_${sigma}`)?.expected ?? [];
    for (const angle of [4, 5, 6, 7]) expect(Math.abs(measured(sigma, angle) / half! - 1)).toBeLessThan(0.015);
  });

  it('the measurement asks for as many rows as shift an edge by a pixel (E56)', () => {
    const { plane, place } = renderEdge({ angle: 2.1, rows: 26 });
    expect(fault(measureEdge(plane, place, seededRandom(1)))).toMatchObject({ is: 'edge too short', needed: Math.ceil(1 / lean(2.1)) });
  });

  it('defocus by geometry is the limit of defocus with diffraction, many waves out', () => {
    // d = δ/N = 8NλW, and ν = fλN: x = πfd = 8πνW.
    for (const share of [0.01, 0.02]) expect(defocusTransfer(share, 8)).toBeCloseTo(discContrast(share, 64), 1);
  });
});
