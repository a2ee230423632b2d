// Contract of the prints: where everything stands, worked out by hand for two targets and a ramp. Lengths in millimetres.
import { describe, expect, test } from 'vitest';
import type { Shape } from '../../src/optics/print/drawing.ts';
import { mosaic } from '../../src/optics/print/mosaic.ts';
import { drawRamp } from '../../src/optics/print/ramp.ts';
import { layOutRamp, numberRamp, rampDepth, rampMarks, readRampNumber } from '../../src/optics/print/rampLayout.ts';
import { textureEdges, textureStripes } from '../../src/optics/print/rampTexture.ts';
import { drawTarget } from '../../src/optics/print/target.ts';
import type { TargetMeasure } from '../../src/optics/print/measure.ts';
import { millimetres as mm } from '../../src/units.ts';

const round = (value: number): number => Math.round(100 * value) / 100 + 0;
/** Left, top, width and height; of a text where it stands, its size and its words. */
const told = (shape: Shape | undefined): unknown => {
  if (shape?.kind === 'rectangle') return [shape.at.x, shape.at.y, shape.width, shape.height].map(round);
  return shape?.kind === 'text' ? [round(shape.at.x), round(shape.at.y), round(shape.size), shape.text] : (shape?.kind ?? null);
};

/** Bars of two millimetres, 63 of them; a mark of 18 in each corner, 3 of white between the parts. */
const SMALL: TargetMeasure = { bars: 63, index: 0, bar: mm(2), field: mm(126), square: mm(18), gap: mm(3), seen: { width: mm(120), height: mm(100) } };
/** Bars of 2.8: a field of 176.4, in which words find room between the marks. */
const ROOMY: TargetMeasure = { bars: 63, index: 0, bar: mm(2.8), field: mm(176.4), square: mm(25.2), gap: mm(4.2), seen: { width: mm(400), height: mm(300) } };
const LABELS = { words: ['one', 'two'], scale: 'scale' };

function parts(measure: TargetMeasure) {
  const target = drawTarget(measure, LABELS);
  const shapes = target.drawing.shapes.slice(mosaic(63, measure.bar, 0, 0).length);
  const texts = shapes.findIndex(({ kind }) => kind === 'text');
  return {
    target,
    centre: shapes.slice(0, 4),
    pointers: shapes.slice(4, 8),
    words: shapes.slice(texts, texts + 2),
    scale: shapes.slice(texts + 2, -8),
    corners: shapes.slice(-8),
  };
}

describe('a small target', () => {
  const { target, centre, pointers, words, scale, corners } = parts(SMALL);

  test('is as wide as words and scale, and holds words, view and scale above each other', () => {
    // 130 and twice 6; two lines of 4.4 and 1; the field with 24 above and below; 12 for the scale.
    expect([target.drawing.width, target.drawing.height].map(round)).toEqual([142, 6 + 9.8 + 174 + 12 + 6]);
    expect([target.middle.x, target.middle.y].map(round)).toEqual([71, 102.8]);
    expect(target.corners).toEqual({ width: 108, height: 90 });
    expect(drawTarget({ ...SMALL, seen: { width: mm(400), height: mm(195) } }, LABELS)).toMatchObject({
      corners: { width: 136, height: 175.5 },
      drawing: { height: expect.closeTo(209.3, 6) },
    });
    expect(drawTarget({ ...SMALL, seen: { width: mm(400), height: mm(999) } }, LABELS)).toMatchObject({
      corners: { height: 180 },
      drawing: { height: expect.closeTo(213.8, 6) },
    });
  });

  test('has a white plus on a leaning square in the middle, clear of the bars', () => {
    expect(centre.map(told)).toEqual([[61, 92.8, 20, 20], 'polygon', [68.6, 102.47, 4.8, 0.67], [70.67, 100.4, 0.67, 4.8]]);
    expect(centre.map((shape) => ('ink' in shape ? shape.ink : ''))).toEqual(['white', 'black', 'white', 'white']);
  });

  test('has a stroke at the middle of each side', () => {
    expect(pointers.map(told)).toEqual(
      [
        [70.7, 39.8 - 0.6 - 2.1, 0.6, 2.1],
        [70.7, 165.8 + 0.6, 0.6, 2.1],
        [8 - 0.6 - 2.1, 102.5, 2.1, 0.6],
        [134.6, 102.5, 2.1, 0.6],
      ].map((each) => each.map(round)),
    );
  });

  test('has its words above and its scale below, 100 long, with a stroke every ten', () => {
    expect(words.map(told)).toEqual([[6, 9.52, 3.4, 'one'], [6, 13.92, 3.4, 'two']]); // prettier-ignore
    expect(scale).toHaveLength(13);
    expect([scale[0], scale[1], scale[2], scale[3], scale[11], scale[12]].map(told)).toEqual([
      [21, 190.8, 0.3, 5],
      [120.7, 190.8, 0.3, 5],
      [21, 194.3, 100, 0.3],
      [30.85, 192.3, 0.3, 2],
      [110.85, 192.3, 0.3, 2],
      [71, 199.3, 3.4, 'scale'],
    ]);
  });

  test('has an angle in each corner of what is photographed, its tip outwards', () => {
    expect(corners.map(told)).toEqual([
      [17, 57.8, 6, 0.5],
      [17, 57.8, 0.5, 6],
      [17, 147.3, 6, 0.5],
      [17, 141.8, 0.5, 6],
      [119, 57.8, 6, 0.5],
      [124.5, 57.8, 0.5, 6],
      [119, 147.3, 6, 0.5],
      [124.5, 141.8, 0.5, 6],
    ]);
    expect(told(parts({ ...SMALL, seen: { width: mm(40), height: mm(100) } }).corners[0])).toEqual([53, 57.8, 3.6, 0.3]);
    expect(told(parts({ ...SMALL, seen: { width: mm(100), height: mm(40) } }).corners[0])).toEqual([26, 84.8, 3.6, 0.3]);
  });
});

describe('a target with room', () => {
  const { target, words, scale } = parts(ROOMY);

  test('has words and scale between its marks', () => {
    // 176.4 and twice 33.6; six of white all round.
    expect([target.drawing.width, target.drawing.height].map(round)).toEqual([188.4, 255.6]);
    expect(target.middle).toEqual({ x: expect.closeTo(94.2, 6), y: expect.closeTo(127.8, 6) });
    expect(words.map(told)).toEqual([[39.6, 9.52, 3.4, 'one'], [39.6, 13.92, 3.4, 'two']]); // prettier-ignore
    expect(told(scale[0])).toEqual([44.2, 127.8 + 88.2 + 8.4, 0.3, 5].map(round));
    expect(target.corners).toEqual({ width: expect.closeTo(182.4, 6), height: expect.closeTo(249.6, 6) });
  });

  test('grows for words that need more than the marks', () => {
    const many = drawTarget(ROOMY, { words: Array.from({ length: 9 }, () => 'x'), scale: '' });
    expect(many.drawing.height).toBeCloseTo(176.4 + 2 * (9 * 4.4 + 1) + 12, 6);
  });
});

describe('a ramp', () => {
  const layout = layOutRamp({ every: mm(10), count: 5 });

  test('has its zero line below the words and half its face, and marks beyond the corners', () => {
    // 50 of depth are 70.71 along a face that leans by 45 degrees; 6, 24 and 6 above it; 6, 14 and 6 below.
    expect(layout).toEqual({
      every: 10,
      count: 5,
      reach: 50,
      half: expect.closeTo(70.7107, 4),
      zero: expect.closeTo(106.7107, 4),
      height: expect.closeTo(203.4214, 4),
    });
    expect(rampDepth(layout, layout.zero - layout.half)).toBeCloseTo(50, 6);
    expect(rampMarks(layout).map(({ middle: { x, y }, box }) => [x, y, box].map(round))).toEqual([
      [13, 23, 14],
      [114, 23, 14],
      [13, 190.42, 14],
      [114, 190.42, 14],
    ]);
  });

  test('says its numbering by its dots, of two lines to either side at least', () => {
    expect([readRampNumber(16 * 6 + 5), readRampNumber(2), readRampNumber(1), readRampNumber(16 * 8 + 5)]).toEqual([
      { every: 10, count: 5 },
      { every: 0.1, count: 2 },
      null,
      null,
    ]);
  });

  test('numbers its lines so that they span three quarters of the depth to either side', () => {
    // About seven lines to either side: of 30 mm every 5, of 7.5 every 1; no less than 3 mm, no more than a sheet holds, 70.7.
    const numbered = (depth: number | 'infinite') => Object.values(numberRamp(depth === 'infinite' ? depth : mm(depth)));
    expect([40, 10, 4, 1, 90, 95, 'infinite' as const].map(numbered)).toEqual([[5, 6], [1, 7], [0.5, 6], [0.5, 6], [10, 6], [10, 7], [10, 7]]); // prettier-ignore
  });

  const { shapes } = drawRamp(mm(40), { words: ['one', 'two', 'three', 'four', 'five', 'six'], depth: (depth) => `d${depth}` }).drawing;
  const texts = shapes.filter(({ kind }) => kind === 'text').map(told) as [number, number, number, string][];
  const { zero, every, count } = layOutRamp(numberRamp(mm(40)));
  const spacing = every * Math.SQRT2;

  test('has five lines of words at most, between its upper marks', () => {
    expect(texts.slice(0, 5)).toEqual(['one', 'two', 'three', 'four', 'five'].map((words, at) => [24, round(6 + 4 * (at + 0.8)), 3.2, words]));
    expect(texts.some(([, , , words]) => words === 'six')).toBe(false);
  });

  test('has its numbers left and right by turns, behind above, and zero at the right of its line', () => {
    const numbers = texts.slice(5);
    const size = Math.min(4, Math.max(1.6, 0.7 * spacing));
    expect(numbers).toHaveLength(2 * count + 1);
    expect(numbers[count]).toEqual([117, round(zero - 1), round(size), 'd0']);
    expect(numbers[count + 1]).toEqual([114, round(zero - spacing + 0.35 * size), round(size), `d${every}`]);
    expect(numbers[count + 2]).toEqual([13, round(zero - 2 * spacing + 0.35 * size), round(size), `d${2 * every}`]);
    expect(numbers[count - 1]).toEqual([114, round(zero + spacing + 0.35 * size), round(size), `d${-every}`]);
  });

  test('has a line beside each number, and the zero line on both sides, twice as thick', () => {
    const lines = shapes.filter(({ kind }) => kind === 'rectangle').map(told) as [number, number, number, number][];
    // (127 - 29) / 2 less 6, 14 and 4: 25 long.
    const thick = Math.min(0.5, spacing / 6);
    const zeros = lines.filter(([, y, , height]) => Math.abs(y + height / 2 - zero) < 0.02);
    expect(zeros).toEqual([[6, round(zero - Math.min(1, spacing / 3) / 2), 39, round(Math.min(1, spacing / 3))], [82, round(zero - Math.min(1, spacing / 3) / 2), 39, round(Math.min(1, spacing / 3))]]); // prettier-ignore
    expect(lines).toContainEqual([82, round(zero - spacing - thick / 2), 25, round(thick)]);
    expect(lines).toContainEqual([20, round(zero - 2 * spacing - thick / 2), 25, round(thick)]);
  });

  test('has bars of 12, 7, 5, 3 and 2 down its middle, in stretches that lean to and fro by five degrees', () => {
    const edges = textureEdges(layout);
    // 70.71 over 16 is 4.4: eight stretches of 17.68, shifted by 1.547.
    expect(edges).toHaveLength(6 * 8);
    const left = (127 - 29 - 1.5466) / 2;
    expect(edges[0]).toEqual({
      from: { x: expect.closeTo(left, 3), y: expect.closeTo(177.4214, 3) },
      to: { x: expect.closeTo(left + 1.5466, 3), y: expect.closeTo(159.7437, 3) },
      dark: 'right',
    });
    expect(edges[1]?.to.x).toBeCloseTo(left, 3);
    expect(edges[7]?.to.y).toBeCloseTo(36, 3);
    expect([8, 16, 24, 32, 40].map((at) => [round((edges[at]?.from.x ?? 0) - left), edges[at]?.dark])).toEqual([[12, 'left'], [19, 'right'], [24, 'left'], [27, 'right'], [29, 'left']]); // prettier-ignore
    expect(textureEdges(layOutRamp({ every: mm(1), count: 2 }))).toHaveLength(6 * 4);
  });

  test('has those bars between its marks, with white beside them', () => {
    const stripes = textureStripes().map(({ from, to, black }) => [round(13 + 101 * from), round(13 + 101 * to), black]);
    expect(stripes).toEqual([[45, 49, false], [49, 61, true], [61, 68, false], [68, 73, true], [73, 76, false], [76, 78, true], [78, 82, false]]); // prettier-ignore
  });
});
