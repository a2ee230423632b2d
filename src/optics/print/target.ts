// The target's page as one drawing, as large as the situation asks; sheets.ts cuts it to paper. From top to bottom:
// words between two marks, the field of bars, and the scale between two more. By the marks a program finds the target in
// a photograph, and on their leaning edges and those of the square in the middle it measures sharpness; the corners are for
// squareness, the scale for the print's true size and for the magnification.
import { millimetres, type Millimetres } from '../../units.ts';
import { leaningSquare, rectangle, text, type Drawing, type Point, type Shape } from './drawing.ts';
import { wrapWords } from './wrapWords.ts';
import type { TargetMeasure } from './measure.ts';
import { drawMark } from './marks.ts';
import { mosaic } from './mosaic.ts';
import { middleSquare, targetMarks } from './targetMarks.ts';

export interface Target {
  readonly drawing: Drawing;
  readonly measure: TargetMeasure;
  /** The field's middle, from which the places of marks and edges count. */
  readonly middle: Point;
  /** Between the outer tips of the corner marks. */
  readonly corners: { readonly width: Millimetres; readonly height: Millimetres };
  /** Between the outer edges of the scale's end marks. */
  readonly scale: Millimetres;
}

/** White all round, at least. */
const LEAST_BORDER = 6;
const LETTERS = 3.4;
const LINE = 4.4;
/** Narrowest page that holds the words and the scale. */
const NARROWEST = 130;
const SCALE_HEIGHT = 12;
/** Tallest view beside its words on one sheet. */
const TALLEST_VIEW = 180;

/** What is written on it: the situation, the date and its sizes, one entry a line, long ones wrapped; and below the scale. */
export interface TargetLabels {
  readonly words: readonly string[];
  readonly scale: string;
}
/** For its sizes alone. */
export const UNLABELLED: TargetLabels = { words: [], scale: '' };

/** Length of the scale, between the outer edges of its end marks. */
export const SCALE: Millimetres = millimetres(100);

export function drawTarget(measure: TargetMeasure, labels: TargetLabels): Target {
  const { field, square, gap } = measure;
  const inner = Math.max(field, NARROWEST);
  const border = Math.max(LEAST_BORDER, gap);
  const width = inner + 2 * border;
  const between = field - 2 * (square + 2 * gap);
  // Words and scale stand between the squares where there is room, above and below them where not.
  const roomy = between >= 100;
  const wordsWidth = roomy ? between : inner;
  const lines = labels.words.flatMap((line) => wrapWords(line, LETTERS, wordsWidth));
  const wordsHeight = lines.length * LINE + 1;
  const strip = square + 2 * gap;
  // The part that is photographed: the field, its squares and the corner marks. Near up, the sensor sees no more than
  // this.
  const visible = Math.min(0.9 * measure.seen.height, TALLEST_VIEW);
  const view = roomy ? field + 2 * Math.max(strip, wordsHeight, SCALE_HEIGHT) : Math.max(field + 2 * strip, visible);
  const viewTop = border + (roomy ? 0 : wordsHeight);
  const height = viewTop + view + (roomy ? 0 : SCALE_HEIGHT) + border;
  const middle = { x: width / 2, y: viewTop + view / 2 };
  const left = middle.x - field / 2;
  const top = middle.y - field / 2;
  const corners = {
    width: millimetres(Math.min(width - border, 0.9 * measure.seen.width)),
    height: millimetres(Math.min(roomy ? view + border : view, 0.9 * measure.seen.height)),
  };
  const shapes = [
    ...mosaic(measure.bars, measure.bar, left, top),
    ...centreMark(measure, middle),
    ...pointers(left, top, field, gap),
    ...targetMarks(measure, middle).flatMap(drawMark),
    ...lines.map((line, index) => text(roomy ? left + strip : border, border + LINE * (index + 0.8), LETTERS, line)),
    ...scaleBar(middle.x, roomy ? top + field + 2 * gap : viewTop + view + 1, SCALE, labels.scale),
    ...cornerMarks(middle.x, middle.y, corners.width, corners.height),
  ];
  return { drawing: { width: millimetres(width), height: millimetres(height), shapes }, measure, middle, corners, scale: SCALE };
}

/** Where the centre AF point is laid: a white plus on a leaning square that is clear of the bars. */
function centreMark(measure: TargetMeasure, middle: Point): Shape[] {
  const { bar } = measure;
  const square = middleSquare(measure, middle);
  const clear = square.box / 2 + measure.bar * 1.5;
  const arm = 1.2 * bar;
  const thick = bar / 3;
  const { x, y } = middle;
  return [
    rectangle(x - clear, y - clear, 2 * clear, 2 * clear, 'white'),
    leaningSquare(square.middle, square.box, square.lean),
    rectangle(x - arm, y - thick / 2, arm * 2, thick, 'white'),
    rectangle(x - thick / 2, y - arm, thick, arm * 2, 'white'),
  ];
}

/** A short stroke in the middle of each side of the field, to find the centre from outside it. */
function pointers(left: number, top: number, field: number, gap: number): Shape[] {
  const stroke = gap * 0.7;
  const thick = gap * 0.2;
  const off = gap * 0.2;
  const x = left + field / 2 - thick / 2;
  const y = top + field / 2 - thick / 2;
  return [
    rectangle(x, top - off - stroke, thick, stroke),
    rectangle(x, top + field + off, thick, stroke),
    rectangle(left - off - stroke, y, stroke, thick),
    rectangle(left + field + off, y, stroke, thick),
  ];
}

/** End marks and a stroke every ten millimetres; measured between the outer edges of the end marks. */
function scaleBar(x: number, y: number, length: number, label: string): Shape[] {
  const start = x - length / 2;
  const thick = 0.3;
  const strokes = Array.from({ length: length / 10 - 1 }, (_, index) => rectangle(start + 10 * (index + 1) - thick / 2, y + 1.5, thick, 2));
  return [
    rectangle(start, y, thick, 5),
    rectangle(start + length - thick, y, thick, 5),
    rectangle(start, y + 3.5, length, thick),
    ...strokes,
    text(x, y + 8.5, LETTERS, label, 'middle'),
  ];
}

function cornerMarks(x: number, y: number, width: number, height: number): Shape[] {
  const arm = Math.min(6, width / 10, height / 10);
  const thick = arm / 12;
  return [-1, 1].flatMap((right) =>
    [-1, 1].flatMap((lower) => {
      const tip = { x: x + (right * width) / 2, y: y + (lower * height) / 2 };
      return [
        rectangle(right > 0 ? tip.x - arm : tip.x, lower > 0 ? tip.y - thick : tip.y, arm, thick),
        rectangle(right > 0 ? tip.x - thick : tip.x, lower > 0 ? tip.y - arm : tip.y, thick, arm),
      ];
    }),
  );
}
