// Numbers of the practice picture from the prints to the bytes, kept to seven digits: where things fall, what is painted, and what is written.
import { describe, expect, test } from 'vitest';
import { developedBytes } from '../../../src/practice/pictures/developed.ts';
import { strokes } from '../../../src/practice/pictures/letters.ts';
import { mountRamp, project, projectionOf } from '../../../src/practice/pictures/mounted.ts';
import { paintScene } from '../../../src/practice/pictures/scene.ts';
import { SQUARE, type Shot } from '../../../src/practice/pictures/shot.ts';
import { diffraction, discAt, imageDistance } from '../../../src/practice/pictures/thinLens.ts';
import { kept } from '../../kept/kept.ts';
import { sevenDigits } from '../../kept/sevenDigits.ts';
import { summed } from '../../kept/summed.ts';
import { LENS, POSE, RAMP, ramp, SHOT, TARGET, target } from './prints.ts';

describe('where things fall', () => {
  test('through the lens', () => {
    const lenses = [LENS, { ...LENS, focusError: 7, aperture: 5.6 }, { ...LENS, focusError: -40, focalLength: 85 }];
    const numbers = lenses.flatMap((lens) => [imageDistance(lens), diffraction(lens), ...[900, 1090, 1100, 1300].map((z) => discAt(lens, z))]);
    expect(sevenDigits(numbers)).toMatchSnapshot();
  });

  test('from each print, straight and turned', () => {
    const { origin, right, down } = mountRamp(RAMP, 2.5, TARGET, 30, 1.5);
    expect(sevenDigits([origin, right, down, ramp.origin, ramp.right, ramp.down, target.origin, target.right, target.down])).toMatchSnapshot('first');
    const poses = [SQUARE, POSE, { ...SQUARE, lean: 20 }, { ...SQUARE, swing: 20 }, { ...SQUARE, roll: 20 }];
    const projections = poses.flatMap((pose) => [target, ramp].map((sheet) => projectionOf(sheet, { ...SHOT, pose })));
    expect(sevenDigits(projections)).toMatchSnapshot('second');
    expect(sevenDigits(projections.map((projection) => Object.values(project(projection, 1.3, 2.1))))).toMatchSnapshot('third');
  });

  test('of letters, each by its code', () => {
    const written = (words: string, from: 'start' | 'middle') =>
      strokes({ kind: 'text', at: { x: 3, y: 5 }, size: 2, text: words, from }).map((box) => box.flatMap(({ x, y }) => [x, y]));
    expect(sevenDigits([written('abcdefgh', 'start'), written('a 9𝄞z', 'middle'), written(' ', 'start')])).toMatchSnapshot();
  });
});

test('what is painted', () => {
  const painted = (pose: Shot['pose'], left: number, fine: number) => {
    const window = { left, top: -4, width: 60 * fine, height: 48 * fine, fine };
    const seen = [target, ramp].map((sheet) => ({ sheet, projection: projectionOf(sheet, { ...SHOT, pose }) }));
    return kept(() => summed(paintScene(seen, window)));
  };
  expect([painted(SQUARE, -3, 2), painted(POSE, 5, 2), painted(POSE, -10, 1)]).toMatchSnapshot();
});

test('what is written of every level of light, and with a sharper edge', () => {
  const [width, height] = [128, 129];
  const levels = Float32Array.from({ length: width * height }, (_, index) => -0.01 + (index / 16_384) * 1.02);
  const turned = levels.toReversed();
  const steps = levels.map((_, index) => (Math.floor(index / 9) % 3) / 3);
  const light = { red: levels, green: turned, blue: steps };
  expect([0, 0.4, 1.3].map((sharpening) => sevenDigits(summed(developedBytes(light, width, height, sharpening))))).toMatchSnapshot('first');
  expect([...developedBytes(light, width, height, 0)].filter((_, index) => index % 4 === 0 && index < 4000 && index % 40 === 0)).toMatchSnapshot('second');
});
