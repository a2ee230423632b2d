// The optics against published and derived numbers. Each number stands with its source in optics-values.json.
import { describe, expect, it } from 'vitest';
import reference from './optics-values.json' with { type: 'json' };
import { apertureWith, convertedError, type ConverterFactor } from '../../src/optics/converter.ts';
import { depthOfField, hyperfocal, limitsOfField, type Blur } from '../../src/optics/depthOfField.ts';
import { airyDisc, depthOfFocus, quarterWaveDepth } from '../../src/optics/depthOfFocus.ts';
import { flicker } from '../../src/optics/lamps.ts';
import { exposureValue, illuminance, luminance, MID_GREY } from '../../src/optics/light.ts';
import { thinLensMagnification } from '../../src/optics/magnification.ts';
import type { MeasuredFrom } from '../../src/optics/measuredFrom.ts';
import { mirrorOffset, spotOffset } from '../../src/optics/mirror.ts';
import { degrees, ev, fNumber, magnification } from '../../src/optics/quantity.ts';
import { confusion, traditionalConfusion, SENSORS } from '../../src/optics/sensor.ts';
import { allowedTilt, areaAtTarget, edgeDefocus } from '../../src/optics/squareness.ts';
import { exactAperture } from '../../src/optics/stops.ts';
import { USUAL_STEP_WORTH } from '../../src/optics/stepWorth.ts';
import { usualRange } from '../../src/optics/distance.ts';
import { millimetres as mm, seconds } from '../../src/units.ts';
import { value } from '../optics/value.ts';

const blur = (aperture: number, circle: number) => ({ aperture: fNumber(aperture), confusion: mm(circle) });
const usual = magnification(1 / 49);
const inverse = (from: MeasuredFrom, multiple: number) => 1 / value(thinLensMagnification(mm(50), { from, distance: mm(50 * multiple) }));
const diagonalCircle = (index: number) => [confusion(SENSORS[index]!, { by: 'diagonal' })];
const micro = (length: number) => length * 1000;
const finite = (length: number | 'infinite') => (length === 'infinite' ? Number.POSITIVE_INFINITY : length);

const f8 = blur(8, 0.03);
const H = hyperfocal(f8, mm(50));
/** Limits from the lens, of a thin lens focused at this distance from itself. */
const limits = (of: Blur, f: number, distance: number) => limitsOfField(depthOfField(of, magnification(f / (distance - f)), mm(f)), mm(distance));
/** Of a lens so long that front and behind are alike. */
const closeDepth = (of: Blur, m: number) => finite(depthOfField(of, magnification(m), mm(1e9)).total);
const half = limits(f8, 50, H / 2);
/** From the film plane: the thin lens's own image distance is taken off, and added again to the limits. */
const fromFilm = (aperture: number) => {
  const lens = 2500 + Math.sqrt(2500 ** 2 - 5000 * 50);
  const { near, far } = limits(blur(aperture, 1 / 30), 50, lens);
  return { near: (near + 5000 - lens) / 1000, far: (finite(far) + 5000 - lens) / 1000 };
};

const COMPUTED: Record<string, () => number[]> = {
  H1: () => [H],
  // Focused at infinity, sharp from the hyperfocal distance less the focal length.
  H1b: () => [H - 50],
  H1c: () => [limits(f8, 50, H).near],
  H1d: () => [half.near, finite(half.far)],
  H2: () => [hyperfocal(blur(16, 0.03), mm(50)), hyperfocal(f8, mm(25))],
  D1: () => [fromFilm(1.4).near, fromFilm(1.4).far],
  D1b: () => [fromFilm(16).near],
  M2: () => [inverse('front of lens', 50), inverse('front of lens', 25)],
  M3: () => [inverse('film plane', 50), inverse('film plane', 25)],
  P1: () =>
    [1 / 49, 1 / 2].map((m) => {
      const short = closeDepth({ ...blur(2.8, 0.03), pupilRatio: 0.5 }, m);
      return short / closeDepth(blur(2.8, 0.03), m);
    }),
  C_36x24: () => diagonalCircle(0),
  'C_23.6x15.7': () => diagonalCircle(1),
  'C_22.3x14.9': () => diagonalCircle(2),
  'C_17.3x13': () => diagonalCircle(3),
  C2: () => [1.5, 1.6, 2].map<number>((crop) => traditionalConfusion(crop)).concat(confusion(SENSORS[0]!, { by: 'print' })),
  A1: () => [micro(airyDisc(fNumber(2.8), mm(0.000535)))],
  A2: () => [1.4, 5.6, 8, 16].map((n) => micro(airyDisc(fNumber(n)))),
  F1: () => [1.4, 1.8, 2.8, 4, 5.6].map((n) => depthOfFocus(blur(n, 0.03), 0)),
  F2: () => [1.4, 2.8, 5.6, 8].map((n) => micro(quarterWaveDepth(fNumber(n)))),
  S1: () => [1.4, 1.8, 2.8, 3.5, 5.6, 6.3, 11, 22].map((n) => exactAperture(fNumber(n))),
  T1: () => [2.8, 4].flatMap((n) => [1.4, 1.7, 2].map((factor) => apertureWith(factor as ConverterFactor, fNumber(n)))),
  T2: () => Object.values(convertedError(1.4 as ConverterFactor)),
  G1: () => [1, 0].flatMap((end) => [24, 50, 85, 200, 400, 600].map((f) => usualRange(mm(f))[end]! / 1000)),
  G2: () => [1.4, 1.8, 2.8, 4, 5.6].map((n) => closeDepth(blur(n, 0.03), usual)),
  G3: () => [4, 3.5].flatMap((area) => [1 / 49, 1 / 24].map((m) => areaAtTarget(mm(area), magnification(m)))),
  G4: () => [1, 2, 5, 10].map((tilt) => micro(edgeDefocus(mm(4), usual, degrees(tilt)))),
  G5: () => [1.4, 2.8].map((n) => allowedTilt(blur(n, 0.03), USUAL_STEP_WORTH, mm(4), usual)),
  G6: () => [50, 85, 200].map((f) => mirrorOffset(mm(f), degrees(1))),
  G7: () => [spotOffset(mm(4250), degrees(1))],
  E1: () =>
    [
      [16, 1 / 125],
      [2.8, 1 / 60],
      [8, 1 / 125],
      [1, 1],
    ].map(([n, t]) => exposureValue(fNumber(n!), seconds(t!))),
  E2: () => [-3, 0, 8, 10, 18].map((at) => illuminance(ev(at))),
  E3: () => [-3, 0, 8, 10].map((at) => luminance(ev(at))),
  E4: () => [MID_GREY],
  E5: () => ([50, 60] as const).flatMap((mains) => [flicker(mains).hertz, flicker(mains).period * 1000]),
};

describe('the optics agree with numbers from outside', () => {
  it.each(reference.checks)('$id: $quantity ($kind, $read)', ({ id, expected, tolerance }) => {
    const computed = COMPUTED[id]?.();
    expect(computed).toHaveLength(expected.length);
    for (const [index, number] of expected.entries()) {
      expect(Math.abs(computed![index]! - number), `number ${index + 1}`).toBeLessThanOrEqual(tolerance + 1e-12 * number);
    }
  });

  it('at f/16 the 50 mm lens at 5 m from the film is sharp to infinity, as its maker prints (D1b)', () => {
    expect(fromFilm(16).far).toBe(Number.POSITIVE_INFINITY);
  });

  it('G2 is the limit of the full formula for a long lens', () => {
    const { total } = depthOfField(blur(1.4, 0.03), usual, mm(2000));
    expect(finite(total)).toBeCloseTo(205.8, 1);
  });
});
