// Contract of the practice picture before the sensor: where a print's points fall, how wide they spread, how light they are, worked out by hand.
import { describe, expect, test } from 'vitest';
import { developedBytes } from '../../../src/practice/pictures/developed.ts';
import { mountRamp, mountTarget, project, projectionOf } from '../../../src/practice/pictures/mounted.ts';
import { paintScene } from '../../../src/practice/pictures/scene.ts';
import { SQUARE, type LensInUse, type Shot } from '../../../src/practice/pictures/shot.ts';
import { takePicture } from '../../../src/practice/pictures/takenPicture.ts';
import { diffraction, discAt, imageDistance } from '../../../src/practice/pictures/thinLens.ts';
import { rectangle, type Drawing, type Shape } from '../../../src/optics/print/drawing.ts';
import { millimetres as mm } from '../../../src/units.ts';

const LENS: LensInUse = { focalLength: 100, aperture: 2, distance: 1100, focusError: 0, aberration: 0 };
/** At 1,100 mm a lens of 100 draws at a tenth: 110 mm behind it. A pixel of 0.01 mm is a tenth of a millimetre there. */
const SHOT: Shot = {
  pose: SQUARE,
  lens: LENS,
  sensor: { width: 60, height: 40, pitch: 0.01, fullWell: 1e12, readNoise: 0 },
  development: { exposure: 0.8, sharpening: 0 },
  motion: { x: 0, y: 0 },
};
const drawing = (width: number, height: number, ...shapes: Shape[]): Drawing => ({ width: mm(width), height: mm(height), shapes });
const SHEET = drawing(4, 2);

describe('a thin lens', () => {
  test('draws behind its focal length, nearer the farther it is focused', () => {
    expect(imageDistance(LENS)).toBeCloseTo(110, 9);
    expect(imageDistance({ ...LENS, focusError: 1000 })).toBeCloseTo((100 * 2100) / 2000, 9);
  });

  test('spreads a point out of focus by f² over N times what lies beyond f, by its share of the distance', () => {
    // 100² / (2 times 1000) is 5; a tenth of the distance off, nearer or farther.
    expect([discAt(LENS, 1210), discAt(LENS, 1000), discAt(LENS, 1100)]).toEqual([5 * (110 / 1210), 0.5, 0].map((disc) => expect.closeTo(disc, 9)));
    expect(discAt({ ...LENS, focusError: -100 }, 1100)).toBeCloseTo((10_000 / (2 * 900)) * (100 / 1100), 9);
    expect(diffraction({ ...LENS, aperture: 8 })).toBeCloseTo(0.001848, 9);
  });
});

describe('a print before the lens', () => {
  const at = (pose: Partial<Shot['pose']>, x: number, y: number, mounted = mountTarget(SHEET)) => {
    const { x: column, y: row, z } = project(projectionOf(mounted, { ...SHOT, pose: { ...SQUARE, ...pose } }), x, y);
    return [column, row, z].map((value) => expect.closeTo(value, 6));
  };
  const found = (pose: Partial<Shot['pose']>, x: number, y: number, mounted = mountTarget(SHEET)) => {
    const { x: column, y: row, z } = project(projectionOf(mounted, { ...SHOT, pose: { ...SQUARE, ...pose } }), x, y);
    return [column, row, z];
  };

  test('stands with its middle in the middle, ten pixels a millimetre', () => {
    expect(found({}, 2, 1)).toEqual([30, 20, 1100].map((value) => expect.closeTo(value, 6)));
    expect(found({}, 0, 0)).toEqual([10, 10, 1100].map((value) => expect.closeTo(value, 6)));
    expect(found({ right: 1, down: -0.5 }, 2, 1)).toEqual([40, 15, 1100].map((value) => expect.closeTo(value, 6)));
    expect(at({}, 4, 2)).toEqual([50, 30, 1100].map((value) => expect.closeTo(value, 6)));
  });

  test('leans with its upper side away, swings with its right side away, rolls clockwise', () => {
    const [sin, cos] = [Math.sin(Math.PI / 6), Math.cos(Math.PI / 6)];
    expect(found({ lean: 30 }, 2, 0)).toEqual([30, 20 - (10 * cos * 1100) / (1100 + sin), 1100 + sin].map((value) => expect.closeTo(value, 6)));
    expect(found({ swing: 30 }, 4, 1)).toEqual([30 + (20 * cos * 1100) / (1100 + 2 * sin), 20, 1100 + 2 * sin].map((value) => expect.closeTo(value, 6)));
    expect(found({ roll: 90 }, 4, 1)).toEqual([30, 40, 1100].map((value) => expect.closeTo(value, 6)));
  });

  test('has its ramp below, the zero line in its plane and the upper end behind it', () => {
    const ramp = mountRamp(drawing(3, 10), 4, SHEET, 30, 3);
    const [sin, cos] = [0.5, Math.cos(Math.PI / 6)];
    expect(ramp.origin).toEqual([-1.5, 1 + 3, 4 * sin].map((value) => expect.closeTo(value, 9)));
    expect(found({}, 1.5, 4, ramp)).toEqual([30, 20 + 10 * (4 + 4 * cos), 1100].map((value) => expect.closeTo(value, 6)));
    expect(found({}, 1.5, 0, ramp)[2]).toBeCloseTo(1102, 6);
    expect(found({}, 1.5, 10, ramp)[2]).toBeCloseTo(1097, 6);
  });
});

describe('the scene', () => {
  const painted = (shapes: readonly Shape[]) => {
    const sheet = mountTarget(drawing(4, 2, ...shapes));
    const light = paintScene([{ sheet, projection: projectionOf(sheet, SHOT) }], { left: 5, top: 5, width: 100, height: 60, fine: 2 });
    return (column: number, row: number): number => Math.round(1000 * (light[(row - 5) * 2 * 100 + (column - 5) * 2] ?? NaN)) / 1000;
  };

  test('is a wall, and on it paper with ink', () => {
    const at = painted([rectangle(1, 0.5, 1, 1)]);
    expect([at(9, 20), at(10, 20), at(49, 20), at(50, 20), at(30, 9), at(30, 10), at(30, 29), at(30, 30)]).toEqual([
      0.35, 0.9, 0.9, 0.35, 0.35, 0.9, 0.9, 0.35,
    ]);
    expect([at(19, 20), at(20, 20), at(29, 20), at(30, 20), at(25, 14), at(25, 15), at(25, 24), at(25, 25)]).toEqual([
      0.9, 0.04, 0.04, 0.9, 0.9, 0.04, 0.04, 0.9,
    ]);
  });

  test('has what is drawn later on top, and shapes that touch without a seam', () => {
    const at = painted([rectangle(1, 0.5, 0.525, 1), rectangle(1.525, 0.5, 0.475, 1), rectangle(1.5, 1, 0.2, 0.2, 'white'), rectangle(1.6, 1.1, 0.1, 0.1)]);
    expect([at(25, 16), at(25, 20), at(26, 21), at(25, 22)]).toEqual([0.04, 0.9, 0.04, 0.04]);
  });

  test('has discs of their own area', () => {
    const sheet = mountTarget(drawing(4, 2, rectangle(0, 0, 4, 2), { kind: 'disc', middle: { x: 2, y: 1 }, radius: 0.5, ink: 'white' }));
    const light = paintScene([{ sheet, projection: projectionOf(sheet, SHOT) }], { left: 10, top: 10, width: 80, height: 40, fine: 2 });
    const white = light.reduce((sum, each) => sum + (each - 0.04) / 0.86, 0);
    // A radius of five pixels, ten cells.
    expect(white).toBeCloseTo(Math.PI * 100, 0);
  });
});

test('bytes are coded by the curve of sRGB, and sharpened by what is lost in a blur', () => {
  const level = (linear: number) => new Float32Array(25).fill(linear);
  const flat = developedBytes({ red: level(0.2140411), green: level(0), blue: level(2) }, 5, 5, 0);
  expect(flat.slice(0, 4)).toEqual(Uint8ClampedArray.of(128, 0, 255, 255));
  expect(developedBytes({ red: level(0.002), green: level(-1), blue: level(1) }, 5, 5, 0.5).slice(0, 4)).toEqual(
    Uint8ClampedArray.of(Math.round(255 * 12.92 * 0.002), 0, 255, 255),
  );
  const edge = Float32Array.from({ length: 81 }, (_, at) => (at % 9 < 4 ? 0.05 : 0.4));
  const [plain, sharp] = [0, 1].map((sharpening) => developedBytes({ red: edge, green: edge, blue: edge }, 9, 9, sharpening)) as [
    Uint8ClampedArray,
    Uint8ClampedArray,
  ];
  expect(sharp[4 * 39]! < plain[4 * 39]! && sharp[4 * 40]! > plain[4 * 40]!).toBe(true);
  expect(Math.abs(sharp[4 * 36]! - plain[4 * 36]!)).toBeLessThanOrEqual(1);
});

describe('a picture taken', () => {
  const sheet = mountTarget(drawing(4, 2, rectangle(2, 0, 2, 2)));
  const taken = (shot: Partial<Shot>) => takePicture([sheet], { ...SHOT, ...shot }, 1);
  const code = (linear: number): number => Math.round(255 * (1.055 * linear ** (1 / 2.4) - 0.055));
  const at = ({ rgba }: { rgba: Uint8ClampedArray }, x: number, y: number): number => rgba[4 * (y * 60 + x) + 1] ?? NaN;

  test('has wall, paper and ink at their places, as light as the exposure makes them', () => {
    const picture = taken({});
    expect([at(picture, 3, 20), at(picture, 20, 20), at(picture, 40, 20), at(picture, 57, 20), at(picture, 30, 4)]).toEqual(
      [0.28, 0.72, 0.032, 0.28, 0.28].map(code),
    );
    expect(picture.projections).toHaveLength(1);
    expect(takePicture([], SHOT, 1).rgba[1]).toBe(code(0.28));
  });

  test('is blurred by defocus, by the lens and by motion', () => {
    // Of an edge that is sharp, the pixels beside it; 12 mm off, a disc of 5 by 12 in 1,112 is 5.4 pixels.
    const beside = (shot: Partial<Shot>) => [at(taken(shot), 28, 20) < code(0.7), at(taken(shot), 25, 20) < code(0.715)];
    expect(beside({})).toEqual([false, false]);
    expect(beside({ lens: { ...LENS, focusError: 12 } })).toEqual([true, false]);
    expect(beside({ lens: { ...LENS, aberration: 1 } })).toEqual([true, false]);
    expect(beside({ lens: { ...LENS, aberration: 2.5 } })).toEqual([true, true]);
    expect(beside({ motion: { x: 6, y: 0 } })).toEqual([true, false]);
    expect(beside({ motion: { x: 0, y: 6 } })).toEqual([false, false]);
  });

  test('is sharp where what stands there is in focus, and the softer the farther it lies before or behind', () => {
    // At f/0.2 a disc is 5 pixels for a millimetre. Turned by 45°, a pixel to the side is a tenth of a millimetre nearer or farther.
    const lens = { ...LENS, aperture: 0.2 };
    const edgeAcross = mountTarget(drawing(4, 2, rectangle(0, 1, 4, 1)));
    const edgeDown = mountTarget(drawing(2, 2, rectangle(1, 0, 1, 2)));
    const swung = (focusError: number, right = 0) =>
      takePicture([edgeAcross], { ...SHOT, pose: { ...SQUARE, swing: 45, right }, lens: { ...lens, focusError } }, 1);
    const leant = (focusError: number, down = 0) => takePicture([edgeDown], { ...SHOT, pose: { ...SQUARE, lean: 45, down }, lens: { ...lens, focusError } }, 1);
    /** The middle of the columns, or rows, where the edge is as steep as anywhere. */
    const sharpest = (steep: readonly number[]): number => {
      const most = steep.flatMap((each, place) => (each === Math.max(...steep) ? [place + 0.5] : []));
      return most.reduce((sum, place) => sum + place, 0) / most.length;
    };
    const across = (picture: { rgba: Uint8ClampedArray }) => Array.from({ length: 60 }, (_, x) => at(picture, x, 18) - at(picture, x, 21));
    const down = (picture: { rgba: Uint8ClampedArray }) => Array.from({ length: 40 }, (_, y) => at(picture, 28, y) - at(picture, 31, y));
    const found = [
      ...[swung(0), swung(0.8), swung(-0.5, 1)].map((picture) => sharpest(across(picture))),
      ...[leant(0), leant(0.3), leant(0, 0.5)].map((picture) => sharpest(down(picture))),
    ];
    [30, 38, 35, 20, 17, 25].forEach((place, one) => expect(Math.abs(found[one]! - place)).toBeLessThan(1.5));
    const steep = across(swung(0));
    expect([20, 24, 28].map((x) => steep[x]! < steep[x + 2]!)).toEqual([true, true, true]);
    expect([32, 36, 40].map((x) => steep[x]! < steep[x - 2]!)).toEqual([true, true, true]);
  });

  test('may show a part of the print alone, and is the same for a seed', () => {
    const aside = taken({ pose: { ...SQUARE, right: 4, down: 2 } });
    expect([at(aside, 45, 35), at(aside, 55, 35), at(aside, 30, 20), at(aside, 59, 39)]).toEqual([0.28, 0.72, 0.28, 0.72].map(code));
    const noisy = { sensor: { ...SHOT.sensor, fullWell: 1000 } };
    expect(taken(noisy)).toEqual(taken(noisy));
  });
});
