// The bars, the marks with their dots, and the edges, kept to seven digits: what a photograph is read by must be what was drawn.
import { expect, test } from 'vitest';
import { barAt, barIndex } from '../../../src/optics/print/barSeries.ts';
import { dotsFor, readDots } from '../../../src/optics/print/dots.ts';
import { disc, leaningSquare, rectangle, text } from '../../../src/optics/print/drawing.ts';
import { fieldCells } from '../../../src/optics/print/fieldCells.ts';
import { DOT_PLACES, drawMark, fourMarks, HALF_SIDE, LEANS, markCorners, onMark } from '../../../src/optics/print/marks.ts';
import { sizesOf } from '../../../src/optics/print/measure.ts';
import { mosaic } from '../../../src/optics/print/mosaic.ts';
import { autocorrelation, BAR_COUNTS, barSequence, laneEdges } from '../../../src/optics/print/sequence.ts';
import { sidesOf } from '../../../src/optics/print/slantedEdge.ts';
import { middleSquare, targetEdges, targetMarks } from '../../../src/optics/print/targetMarks.ts';
import { millimetres as mm } from '../../../src/units.ts';
import { oneLine } from '../../kept/oneLine.ts';
import { flat, summedShapes, weighed } from './flat.ts';

const digits = (bits: Iterable<boolean | number>): string => Array.from(bits, Number).join('');

test('the series of bars, from its first to its last', () => {
  expect(oneLine([0, 1, 100, 205, 206, 207, 511].map(barAt))).toMatchSnapshot();
  expect([0, 1, 2, 206, 510, 511].map((index) => barIndex(barAt(index)))).toEqual([0, 1, 2, 206, 510, 511]);
  expect([0, 1, 206, 510].map((index) => barIndex(mm(barAt(index) * 1.0001)))).toEqual([1, 2, 207, 511]);
  expect([barIndex(mm(0.001)), barIndex(mm(barAt(511) * 1.0001)), barIndex(mm(barAt(512)))]).toEqual([0, null, null]);
});

test('the rows of bars, the lanes, and how a row agrees with itself', () => {
  expect(BAR_COUNTS.map((count) => [digits(barSequence(count)), laneEdges(count).join(' ')])).toMatchSnapshot('bar counts');
  expect(
    BAR_COUNTS.map((count) => oneLine([0, 1, 2, 5, count - 2, count - 1, count].map((shift) => autocorrelation(barSequence(count), shift)))),
  ).toMatchSnapshot('autocorrelation');
});

test('the field of bars', () => {
  expect(BAR_COUNTS.map((count) => [summedShapes(mosaic(count, mm(2.5), 3, -4)), weighed([...fieldCells(count)])])).toMatchSnapshot('bar counts');
  const cells = fieldCells(31);
  expect(Array.from({ length: 31 }, (_, row) => digits(cells.subarray(31 * row, 31 * row + 31)))).toMatchSnapshot('cells');
});

test('the dots of every number, and which dots are refused', () => {
  expect(
    ['target', 'ramp'].map((kind) => weighed(Array.from({ length: 512 }, (_, number) => Number(`0b${digits(dotsFor(kind as 'ramp', number))}`)))),
  ).toMatchSnapshot();
  const dots = dotsFor('target', 300);
  const turned = dots.map((dot, at) => (at === 0 || at === 15 ? !dot : dot));
  expect(
    [dots, [...dots, false], dots.slice(1), dots.with(0, false), dots.with(15, true), turned, dots.with(4, !dots[4])].map((each) => readDots('target', each)),
  ).toEqual([300, null, null, null, null, null, null]);
  expect(readDots('ramp', dots)).toBeNull();
});

test('shapes, marks and what is drawn of them', () => {
  const shapes = [rectangle(1, 2, 3, 4), rectangle(1, 2, 3, 4, 'white'), disc({ x: 5, y: 6 }, 7), text(1, 2, 3, 'a'), text(1, 2, 3, 'b', 'middle')];
  expect(flat([...shapes, ...[5, -5, 0, 30].map((angle) => leaningSquare({ x: 10, y: 20 }, 9, angle))])).toMatchSnapshot('leaning square');
  const marks = (['target', 'ramp'] as const).flatMap((kind) => fourMarks(kind, 341, { x: 50, y: 80 }, { x: 60, y: 90 }, 14));
  expect(marks.flatMap((mark) => [`${mark.name} ${digits(mark.dots)} ${oneLine(markCorners(mark))}`, ...flat(drawMark(mark))])).toMatchSnapshot('mark corners');
  expect(oneLine([HALF_SIDE, DOT_PLACES, onMark({ middle: { x: 1, y: 2 }, box: 18, lean: LEANS.ramp }, 3, -1)])).toMatchSnapshot('half side');
});

test('where the edges lie that sharpness is measured on', () => {
  const sizes = sizesOf(63, 206);
  expect(sidesOf({ middle: { x: 1, y: 2 }, box: 18, lean: LEANS.target }, 'corner').map(oneLine)).toMatchSnapshot('sides of');
  expect(
    [sizesOf(31, 20), sizesOf(127, 400)].map((each) => oneLine([each, targetMarks(each).map(({ middle, box }) => [middle, box]), middleSquare(each)])),
  ).toMatchSnapshot('sizes of');
  expect(targetEdges(sizes).map(({ at, runs, from, to }) => `${at} ${runs} ${oneLine([from.x, from.y, to.x, to.y])}`)).toMatchSnapshot('target edges');
});
