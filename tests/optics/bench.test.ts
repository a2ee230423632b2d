import { describe, expect, it } from 'vitest';
import { benchOf, type Rig } from '../../src/optics/bench.ts';
import { apertureWith, focalLengthWith, type ConverterFactor } from '../../src/optics/converter.ts';
import { fNumber, magnification } from '../../src/optics/quantity.ts';
import { SENSORS } from '../../src/optics/sensor.ts';
import { USUAL_AF_AREA } from '../../src/optics/squareness.ts';
import { USUAL_STEP_WORTH } from '../../src/optics/stepWorth.ts';
import { millimetres as mm } from '../../src/units.ts';
import { fault, value } from './value.ts';

const rig: Rig = {
  focalLength: mm(85),
  aperture: fNumber(1.8),
  distance: { from: 'film plane', distance: mm(4250) },
  measured: null,
  sensor: SENSORS[0]!,
  pitch: mm(0.006),
  confusionRule: { by: 'traditional' },
  area: USUAL_AF_AREA,
  worth: USUAL_STEP_WORTH,
};

describe('the bench of one rig', () => {
  it('an 85 mm f/1.8 at 4.25 m: about a quarter of a metre of depth, sixteen steps of it', () => {
    const bench = value(benchOf(rig));
    expect(1 / bench.magnification).toBeCloseTo(47.98, 2);
    expect(bench.depth.total).toBeCloseTo(254.1, 0);
    expect(bench.step * 16).toBeCloseTo(248.6, 0);
    expect(bench.allowedTilt).toBeGreaterThan(5);
    expect(value(bench.target).bars).toBe(63);
  });

  it('a measured magnification is used, and tells the focal length the lens really has', () => {
    const bench = value(benchOf({ ...rig, measured: magnification(1 / 52) }));
    expect(bench.magnificationIs).toBe('measured');
    expect(bench.focalLength).toBeCloseTo(4250 / (52 + 2 + 1 / 52), 9);
    expect(bench.depth.front).toBeGreaterThan(value(benchOf(rig)).depth.front);
  });

  it('a distance no such lens can focus at is answered with what to do', () => {
    expect(fault(benchOf({ ...rig, distance: { from: 'film plane', distance: mm(200) } }))).toMatchObject({ is: 'no focus so near' });
  });

  it('a converter is counted in: 1.4 times the length, and the magnification it gives at the same place', () => {
    const factor = 1.4 as ConverterFactor;
    const bench = value(
      benchOf({
        ...rig,
        focalLength: focalLengthWith(factor, rig.focalLength),
        aperture: apertureWith(factor, rig.aperture),
      }),
    );
    expect(bench.focalLength).toBeCloseTo(119, 9);
    expect(bench.blur.aperture).toBeCloseTo(2.52, 9);
    expect(bench.magnification / value(benchOf(rig)).magnification).toBeCloseTo(1.42, 2);
  });

  it('a target larger than a wall leaves the rest known', () => {
    const far = value(benchOf({ ...rig, distance: { from: 'film plane', distance: mm(200_000) } }));
    expect(fault(far.target)).toEqual({ is: 'target too large' });
    expect(far.depth.behind).toBe('infinite');
  });
});
