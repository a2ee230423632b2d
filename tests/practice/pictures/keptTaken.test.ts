// Bytes of whole practice pictures, kept in sums. The sensor has hardly any noise, so that a byte tells of everything before it.
import { describe, expect, test } from 'vitest';
import { rectangle } from '../../../src/optics/print/drawing.ts';
import { mountRamp, mountTarget } from '../../../src/practice/pictures/mounted.ts';
import { SQUARE, type Shot } from '../../../src/practice/pictures/shot.ts';
import { takePicture } from '../../../src/practice/pictures/takenPicture.ts';
import { kept } from '../../kept/kept.ts';
import { summed } from '../../kept/summed.ts';
import { drawing, LENS, POSE, RAMP, ramp, SHOT, target } from './prints.ts';

describe('a whole picture', () => {
  const taken = (more: Partial<Shot>, sheets = [target, ramp]) =>
    kept(() => {
      const { width, height, rgba, projections } = takePicture(sheets, { ...SHOT, ...more }, 5);
      return [width, height, summed(rgba), summed(projections.flat())];
    });

  test('in focus and out of it, with every blur', () => {
    expect([
      taken({}),
      taken({ lens: { ...LENS, focusError: 9 } }),
      taken({ lens: { ...LENS, focusError: -12, aperture: 1.4 }, pose: POSE }),
      taken({ lens: { ...LENS, aberration: 1.5 } }),
      taken({ lens: { ...LENS, aperture: 22 } }),
      taken({ motion: { x: 6, y: 0 } }),
      taken({ motion: { x: 0, y: -6 } }),
      taken({ motion: { x: -5, y: 4 }, lens: { ...LENS, focusError: 6, aberration: 0.7 } }),
      taken({ development: { exposure: 1.1, sharpening: 0.5 } }),
    ]).toMatchSnapshot();
  });

  test('of prints that lie in part or whole outside, fill it, or are not there', () => {
    const moved = (right: number, down: number) => taken({ pose: { ...SQUARE, right, down }, lens: { ...LENS, focusError: 10 } }, [target]);
    const places = [[4, 0], [-4, 0], [0, 4], [0, -4], [-30, 0], [30, 0], [0, 30], [0, -30], [6.5, 4], [-6.5, -4]] as const; // prettier-ignore
    expect(places.map(([right, down]) => moved(right, down))).toMatchSnapshot('first');
    const wide = mountTarget(drawing(90, 70, rectangle(30, 20, 14.9, 14.8), rectangle(46, 33, 9, 7)));
    expect([taken({}, [wide]), taken({ lens: { ...LENS, focusError: -8 }, motion: { x: 3, y: 2 } }, [wide]), taken({}, [])]).toMatchSnapshot('second');
  });

  test('of leaning prints behind each other, each with its own depth', () => {
    const steep = mountRamp(RAMP, 3, drawing(6, 0), 75, -1);
    const blurred = { lens: { ...LENS, focusError: 2, aperture: 0.8 } };
    expect([taken(blurred, [target, steep]), taken({ ...blurred, pose: POSE }, [steep, target]), taken(blurred, [steep])]).toMatchSnapshot();
  });
});
