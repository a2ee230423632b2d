// Pictures that are no print of ours, some of them as near to one as chance makes them: noise, clouds, leaves, pages of text,
// bricks, boards, discs, stripes, and squares that lean and have dots like a mark's, strewn or in rows.
import { addPolygon, takeCoverage } from '../../../src/practice/pictures/coverage.ts';
import { gaussianBlur } from '../../../src/practice/pictures/smooth.ts';
import { coded } from './quickPicture.ts';
import { planeOf, type Plane } from '../../../src/photographs/plane.ts';
import type { Point } from '../../../src/optics/print/drawing.ts';
import { normal, seededRandom, type Random } from '../../../src/practice/random.ts';

const WIDTH = 900;
const HEIGHT = 640;

class Sheet {
  readonly light = new Float32Array(WIDTH * HEIGHT).fill(0.8);
  readonly #sums = new Float32Array((WIDTH + 1) * HEIGHT);

  /** Only the rows that they reach are gone through: a page of text is thousands of them. */
  lay(polygons: readonly (readonly Point[])[], tone: number): void {
    const rows = polygons.flat().map(({ y }) => y);
    const top = Math.max(0, Math.floor(Math.min(...rows)));
    const band = { width: WIDTH, height: Math.min(HEIGHT, Math.ceil(Math.max(...rows))) - top };
    if (band.height <= 0) return;
    for (const polygon of polygons)
      addPolygon(
        this.#sums,
        band,
        polygon.map(({ x, y }) => ({ x, y: y - top })),
      );
    takeCoverage(this.#sums, band, (pixel, coverage) => {
      const at = top * WIDTH + pixel;
      this.light[at] = this.light[at]! * (1 - coverage) + tone * coverage;
    });
  }
}

const ring = ({ x, y }: Point, radius: number, sides: number, turn = 0, squeeze = 1): Point[] =>
  Array.from({ length: sides }, (_, index) => {
    const angle = turn + (2 * Math.PI * index) / sides;
    return { x: x + radius * Math.cos(angle), y: y + radius * squeeze * Math.sin(angle) };
  });
const square = (middle: Point, side: number, lean: number): Point[] => ring(middle, side / Math.SQRT2, 4, Math.PI / 4 + (lean * Math.PI) / 180);

const between = (random: Random, least: number, most: number): number => least + random() * (most - least);
const anywhere = (random: Random): Point => ({ x: between(random, 0, WIDTH), y: between(random, 0, HEIGHT) });

/** A square with some of a mark's four dots. */
function leaningMark(sheet: Sheet, random: Random, middle: Point, side: number, lean: number): void {
  sheet.lay([square(middle, side, lean)], 0.04);
  const turn = (lean * Math.PI) / 180;
  const off = (side * 1.35) / 8.31;
  for (const [x, y] of [
    [-off, -off],
    [off, -off],
    [-off, off],
    [off, off],
  ] as const) {
    if (random() < 0.5) continue;
    sheet.lay([ring({ x: middle.x + x * Math.cos(turn) - y * Math.sin(turn), y: middle.y + x * Math.sin(turn) + y * Math.cos(turn) }, side / 8.31, 24)], 0.8);
  }
}

/** Noise of one size over another, from coarse to fine. */
function clouds(sheet: Sheet, random: Random, finest: number): void {
  sheet.light.fill(0.4);
  for (let size = 256; size >= finest; size /= 2) {
    const columns = Math.ceil(WIDTH / size) + 1;
    const knots = Array.from({ length: columns * (Math.ceil(HEIGHT / size) + 1) }, () => normal(random, 0, 0.12));
    for (let y = 0; y < HEIGHT; y++) {
      for (let x = 0; x < WIDTH; x++) {
        const at = Math.floor(y / size) * columns + Math.floor(x / size);
        const [right, down] = [(x % size) / size, (y % size) / size];
        const upper = knots[at]! * (1 - right) + knots[at + 1]! * right;
        const lower = knots[at + columns]! * (1 - right) + knots[at + columns + 1]! * right;
        sheet.light[y * WIDTH + x]! += upper * (1 - down) + lower * down;
      }
    }
  }
}

export const OTHER_KINDS = {
  noise: (sheet, random) => {
    for (let pixel = 0; pixel < sheet.light.length; pixel++) sheet.light[pixel] = random();
  },
  clouds: (sheet, random) => clouds(sheet, random, 4),
  leaves: (sheet, random) => {
    clouds(sheet, random, 32);
    for (let leaf = 0; leaf < 900; leaf++)
      sheet.lay([ring(anywhere(random), between(random, 4, 40), 7, between(random, 0, 3), between(random, 0.3, 0.8))], between(random, 0.02, 0.6));
  },
  text: (sheet, random) => {
    const size = between(random, 8, 30);
    for (let y = size; y < HEIGHT - size; y += 1.5 * size) {
      for (let x = size; x < WIDTH - size; x += 0.65 * size) {
        if (random() < 0.17) continue;
        sheet.lay([box(x, y, 0.12 * size, size * between(random, 0.5, 1))], 0.05);
        sheet.lay([box(x, y + size * random() * 0.8, 0.5 * size, 0.12 * size)], 0.05);
        if (random() < 0.5) sheet.lay([box(x + 0.4 * size, y, 0.12 * size, size * 0.6)], 0.05);
      }
    }
  },
  bricks: (sheet, random) => {
    const [width, height, joint] = [between(random, 30, 120), between(random, 12, 50), between(random, 2, 8)];
    for (let row = 0; row * height < HEIGHT; row++)
      for (let x = -width; x < WIDTH; x += width)
        sheet.lay([box(x + (row % 2) * (width / 2), row * height, width - joint, height - joint)], between(random, 0.05, 0.4));
  },
  board: (sheet, random) => {
    const [size, lean] = [between(random, 12, 60), between(random, -8, 8)];
    const cells: Point[][] = [];
    for (let row = -30; row < 60; row++)
      for (let column = -30; column < 80; column++)
        if ((row + column) % 2 === 0) cells.push(turned(box(column * size, row * size, size * 0.96, size * 0.96), lean));
    sheet.lay(cells, 0.05);
  },
  discs: (sheet, random) => {
    for (let disc = 0; disc < 150; disc++) {
      const [at, radius] = [anywhere(random), between(random, 4, 30)];
      sheet.lay([ring(at, radius, 40)], 0.05);
      sheet.lay([ring(at, radius * between(random, 0.2, 0.6), 40)], 0.8);
    }
  },
  stripes: (sheet, random) => {
    for (let x = 0; x < WIDTH;) {
      const width = between(random, 3, 25);
      if (random() < 0.5) sheet.lay([turned(box(x, -100, width, HEIGHT + 200), between(random, -1, 1))], 0.05);
      x += width;
    }
  },
  /** Squares of one size and lean, with dots, wherever they fall. */
  'strewn marks': (sheet, random) => {
    const side = between(random, 10, 40);
    for (let mark = 0; mark < 60; mark++) leaningMark(sheet, random, anywhere(random), side, 5);
  },
  /** The same in rows, so that many stand to each other as marks do. */
  'marks in rows': (sheet, random) => {
    const [side, across, down] = [between(random, 9, 28), between(random, 1.4, 2.6), between(random, 1.4, 2.6)];
    for (let y = side; y < HEIGHT; y += side * down) for (let x = side; x < WIDTH; x += side * across) leaningMark(sheet, random, { x, y }, side, 5);
  },
} satisfies Record<string, (sheet: Sheet, random: Random) => void>;

export function otherPicture(kind: keyof typeof OTHER_KINDS, seed: number): Plane {
  const random = seededRandom(seed);
  const sheet = new Sheet();
  OTHER_KINDS[kind](sheet, random);
  const soft = gaussianBlur(sheet.light, WIDTH, HEIGHT, between(random, 0.4, 1.5));
  const rgba = new Uint8ClampedArray(4 * WIDTH * HEIGHT);
  for (let pixel = 0; pixel < soft.length; pixel++) {
    const light = Math.max(0, soft[pixel]! + 0.01 * normal(random, 0, 1));
    rgba.fill(coded(light), 4 * pixel, 4 * pixel + 4);
  }
  return planeOf(rgba, WIDTH, HEIGHT);
}

const box = (x: number, y: number, width: number, height: number): Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];
const turned = (points: readonly Point[], angle: number): Point[] => {
  const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
  return points.map(({ x, y }) => ({ x: x * cos - y * sin, y: x * sin + y * cos }));
};
