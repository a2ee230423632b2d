// The ramp with its texture, and the print's check, kept to seven digits over every numbering and round each bound.
import { expect, test } from 'vitest';
import * as v from 'valibot';
import { readOrder, TargetOrder, writeOrder } from '../../../src/optics/print/order.ts';
import { checkPrint, printed, PrintFactor } from '../../../src/optics/print/printCheck.ts';
import { drawRamp, rampError, rampLean } from '../../../src/optics/print/ramp.ts';
import { layOutRamp, numberRamp, RAMP_WORDS, rampDepth, rampMarks, readRampNumber, type RampNumbering } from '../../../src/optics/print/rampLayout.ts';
import { drawTexture, TEXTURE_WIDTH, textureEdges, textureStripes } from '../../../src/optics/print/rampTexture.ts';
import { degrees } from '../../../src/optics/quantity.ts';
import { millimetres as mm } from '../../../src/units.ts';
import { oneLine } from '../../kept/oneLine.ts';
import { flat, weighed } from './flat.ts';

const DEPTHS = [0, 0.5, 2, 3.9, 4, 4.1, 7, 12, 25, 60, 93, 94, 95, 300].map(mm);
const NUMBERINGS = [
  [0.1, 15],
  [0.5, 5],
  [2, 8],
  [5, 2],
  [20, 3],
].map(([every = 1, count = 2]): RampNumbering => ({ every: mm(every), count }));

test('how the lines are numbered', () => {
  expect([...DEPTHS, 'infinite' as const].map((depth) => oneLine(numberRamp(depth)))).toMatchSnapshot('number ramp');
  expect([0, 1, 2, 15, 16, 17, 18, 127, 113, 114, 128, 130].map((number) => oneLine(readRampNumber(number)))).toMatchSnapshot('read ramp number');
});

test('where everything lies on its face', () => {
  const placed = (numbering: RampNumbering) => {
    const layout = layOutRamp(numbering);
    return oneLine([
      layout,
      [0, 50, 120].map((y) => rampDepth(layout, y)),
      rampMarks(layout).map(({ middle, box, dots }) => [middle, box, dots.map(Number).join('')]),
    ]);
  };
  expect([...NUMBERINGS.map(placed), oneLine(RAMP_WORDS)]).toMatchSnapshot();
});

test('its texture', () => {
  expect(
    NUMBERINGS.map((numbering) =>
      drawTexture(layOutRamp(numbering)).map((shape) => weighed(shape.kind === 'polygon' ? shape.corners.flatMap(({ x, y }) => [x, y]) : [])),
    ),
  ).toMatchSnapshot('draw texture');
  expect(textureEdges(layOutRamp({ every: mm(5), count: 2 })).map(({ from, to, dark }) => `${dark} ${oneLine([from.x, from.y, to.x, to.y])}`)).toMatchSnapshot(
    'texture edges',
  );
  expect([...textureStripes().map(oneLine), oneLine(TEXTURE_WIDTH)]).toMatchSnapshot('texture stripes');
});

test.each([...[0.5, 6, 40].map(mm), 'infinite' as const])('the page of a ramp for a depth of %s', (depth) => {
  const words = ['Velde M1', 'Orrin 85 f/1.8, with a line that is far too long to stand between the upper marks', 'c', 'd', 'e', 'f'];
  const { drawing, layout } = drawRamp(depth, { words, depth: String });
  expect(oneLine([drawing.width, drawing.height, layout])).toMatchSnapshot('drawing');
  expect(flat(drawing.shapes.filter(({ kind }) => kind !== 'polygon'))).toMatchSnapshot('flat');
});

test('the lean it was set up at, and the error that it shows', () => {
  const leans = [-1, 0, 0.5, 50, 99, 100, 101].map((back) => oneLine(rampLean(mm(back), mm(100))));
  expect(leans).toMatchSnapshot('leans');
  const errors = [9.9, 10, 10.5, 45, 79.5, 80, 80.5, 81].map((lean) => oneLine(rampError(12, degrees(lean), v.parse(PrintFactor, 0.97))));
  expect([...errors, ...[-4, 0, 3, Number.NaN].map((reading) => oneLine(rampError(reading)))]).toMatchSnapshot('ramp error');
});

test('whether the print is of true size', () => {
  expect(
    [49, 50, 80, 99.4, 99.5, 99.6, 100, 100.4, 100.5, 100.6, 101, 199, 200, 201, 250, Number.NaN].map((measured) => oneLine(checkPrint(mm(100), mm(measured)))),
  ).toMatchSnapshot();
  expect(checkPrint(mm(1000), mm(1005))).toMatchObject({ value: { trueSize: true } });
  expect([0.49, 0.5, 0.7, 1.9, 2, 2.01, 2.5].map((factor) => v.is(PrintFactor, factor))).toEqual([false, true, true, true, true, false, false]);
  expect(printed(mm(180), v.parse(PrintFactor, 0.5))).toBe(90);
});

test('an order comes back out of its address, to the bounds of each field', () => {
  const order = { magnification: 0.02, pitch: 0.006, area: 2.5, sensor: { width: 36, height: 24 }, depth: 90, words: ['a', 'b'], paper: 'A4' };
  const fields: Readonly<Record<string, readonly unknown[]>> = {
    pitch: [0.00049, 0.0005, 0.0009, 0.05, 0.051, 0.09],
    area: [0.09, 0.1, 0.15, 50, 50.5, 51],
    depth: [-1, 0, 0.5, 1_000_000, 1_000_001, null],
    words: [[], Array.from({ length: 8 }, () => 'a'), Array.from({ length: 9 }, () => 'a'), ['a'.repeat(200)], ['a'.repeat(201)]],
    paper: ['Letter', 'A3'],
  };
  const taken = Object.entries(fields).map(
    ([field, values]) =>
      `${field} ${oneLine(values.map((value) => Number(readOrder(encodeURIComponent(JSON.stringify({ ...order, [field]: value }))) !== null)))}`,
  );
  expect(taken).toMatchSnapshot();
  expect(readOrder(writeOrder(v.parse(TargetOrder, order)))).toEqual(order);
  expect([readOrder('%'), readOrder('x')]).toEqual([null, null]);
});
