import { describe, expect, test } from 'vitest';
import { millimetres } from '../../src/units.ts';
import { fNumber } from '../../src/optics/quantity.ts';
import { fitRamp } from '../../src/photographs/rampFit.ts';
import { defocusSquare, growthOf, type RampOptics } from '../../src/photographs/defocusModel.ts';
import type { RampReading } from '../../src/photographs/followedEdge.ts';
import { cutPlane, planeOf, type Plane } from '../../src/photographs/plane.ts';
import { measureRamp } from '../../src/photographs/ramp.ts';
import { rampEdges } from '../../src/photographs/rampEdges.ts';
import { normal, seededRandom } from '../../src/practice/random.ts';
import { project } from '../../src/practice/pictures/mounted.ts';
import { photograph, type KeptShot } from './camera/photograph.ts';
import { rigFor } from './camera/rig.ts';
import { USUAL_SHOT } from './camera/usualShot.ts';

const LENS = { ...USUAL_SHOT.lens, focalLength: 50, aperture: 1.4, distance: 2500 };
const OPTICS: RampOptics = { focalLength: millimetres(50), aperture: fNumber(1.4), distance: millimetres(2500), pitch: millimetres(0.006) };

/** The ramp alone in the middle of a picture, its edges where they truly are. */
function rampPicture(change: Partial<KeptShot>, seed = 1) {
  const sensor = { ...USUAL_SHOT.sensor, width: 500, height: 860 };
  const { ramp, sheets, depth } = rigFor({ lens: LENS, sensor }, 1.5);
  const scale = 50 / 2450;
  const down = -(sheets[1].origin[1] + ramp.layout.zero * Math.SQRT1_2) - 20 * scale;
  const shot: KeptShot = { ...USUAL_SHOT, sensor, lens: LENS, pose: { ...USUAL_SHOT.pose, down }, ...change };
  const { rgba, width, height, projections } = photograph([sheets[1]], shot, seed);
  const edges = rampEdges(ramp.layout, ({ x, y }) => {
    const at = project(projections[0]!, x, y);
    return { x: at.x, y: at.y, depth: at.z - shot.lens.distance };
  });
  return { plane: planeOf(rgba, width, height), edges, total: Number(depth.total), reach: ramp.layout.reach };
}

const focused = (focusError: number): Partial<KeptShot> => ({ lens: { ...LENS, focusError } });

describe('the focus error from the ramp', () => {
  test.each([
    [-45, 'a quiet picture', {}],
    [0, 'a quiet picture', {}],
    [
      30,
      'a noisy, sharpened one',
      { sensor: { ...USUAL_SHOT.sensor, width: 500, height: 860, fullWell: 4000 }, development: { exposure: 0.7, sharpening: 0.5, jpeg: 82 } },
    ],
  ])('of %d mm is told to 3 parts in a hundred of the depth of field, from %s', (error, _, change) => {
    const { plane, edges, total } = rampPicture({ ...change, ...focused(error) });
    const measured = measureRamp(plane, edges, OPTICS);
    if (!measured.ok) throw new Error(measured.fault.is);
    expect(Math.abs(measured.value.error - error) / total).toBeLessThan(0.03);
    expect(measured.value.lies).toBe(error < 0 ? 'in front' : error > 0 ? 'behind' : 'on the target');
    expect(measured.value.growth).toBeGreaterThan(0.8);
    expect(measured.value.growth).toBeLessThan(1.2);
  });

  test('beyond the ramp is no number, but a side', () => {
    for (const [error, lies] of [
      [-150, 'in front'],
      [150, 'behind'],
    ] as const) {
      const { plane, edges } = rampPicture(focused(error));
      expect(measureRamp(plane, edges, OPTICS)).toEqual({ ok: false, fault: { is: 'focus off the ramp', lies } });
    }
  });

  test('on half a ramp is no number', () => {
    const { plane, edges } = rampPicture({});
    const upper = cutPlane(plane, 0, 0, plane.width, 330);
    const covered: Plane = { ...plane, light: plane.light.map((light, index) => (index < upper.light.length ? light : 0.3)) };
    expect(measureRamp(covered, edges, OPTICS)).toMatchObject({ ok: false, fault: { is: 'ramp hidden' } });
  });

  test('in a picture that is blown out is no number', () => {
    const { plane, edges } = rampPicture({ development: { exposure: 3, sharpening: 0, jpeg: 95 } });
    expect(measureRamp(plane, edges, OPTICS)).toMatchObject({ ok: false, fault: { is: 'ramp blown out' } });
  });
});

describe('the thin lens through readings of blur', () => {
  const question = { distance: 2500, growth: growthOf(OPTICS), from: -150, to: 150 };

  /** Blur as the model makes it, 0.8 px at least, with noise of 3 %. */
  function readings(focus: number, seed: number, shake = 0): RampReading[] {
    const random = seededRandom(seed);
    return Array.from({ length: 120 }, (_, index) => {
      const depth = -60 + index;
      const runs = index % 3 === 0 ? 'level' : 'upright';
      const spread =
        Math.sqrt(0.64 + (runs === 'upright' ? shake ** 2 : 0) + question.growth * defocusSquare(depth, focus, 2500)) * (1 + 0.03 * normal(random, 0, 1));
      return { depth, runs, spread, uncertain: 0.03 * spread, contrast: 0.5, off: 0, blown: 0 };
    });
  }

  test('finds the depth of least blur though every eighth reading is wild', () => {
    const wild = readings(22, 1).map((reading, index) => (index % 8 === 0 ? { ...reading, spread: 1 + (index % 5) } : reading));
    expect(Math.abs(fitRamp(wild, question)!.focus - 22)).toBeLessThan(4);
  });

  test('tells the constant blur of upright and of level edges apart, as motion makes them differ', () => {
    const { least, focus } = fitRamp(readings(-15, 2, 1.5), question)!;
    expect(Math.abs(focus + 15)).toBeLessThan(4);
    expect(least.upright! - least.level!).toBeGreaterThan(1.5);
  });

  test('states an interval that holds the truth in at least 93 of a hundred', () => {
    const held = Array.from({ length: 150 }, (_, seed) => fitRamp(readings(10, seed), question)!).filter(({ low, high }) => low <= 10 && high >= 10);
    expect(held.length / 150).toBeGreaterThanOrEqual(0.93);
  });

  test('states an interval as true where readings differ by twice and by half of what they say of themselves', () => {
    for (const honest of [0.5, 2]) {
      const stated = Array.from({ length: 60 }, (_, seed) => readings(10, seed).map((reading) => ({ ...reading, uncertain: reading.uncertain * honest })));
      const fits = stated.map((some) => fitRamp(some, question)!);
      expect(fits.filter(({ low, high }) => low <= 10 && high >= 10).length / fits.length).toBeGreaterThanOrEqual(0.9);
      expect(Math.min(...fits.map(({ low, high }) => high - low))).toBeGreaterThan(0.5);
    }
  });

  test('is not drawn through a handful of readings', () => {
    expect(fitRamp(readings(0, 3).slice(0, 7), question)).toBeNull();
  });
});
