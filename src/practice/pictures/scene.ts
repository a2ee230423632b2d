// The scene in focus everywhere, as linear light on a grid finer than the sensor: a wall, and the prints on it. What a pixel holds is exact:
// each shape of a print is a polygon in the picture, too.
import type { Point, Shape } from '../../optics/print/drawing.ts';
import { addPolygon, takeCoverage, type Grid } from './coverage.ts';
import { strokes } from './letters.ts';
import { project, type Mounted, type Projection } from './mounted.ts';

/** Linear light of paper, ink and wall (common practice: 90 % and 4 % reflect). */
const PAPER = 0.9;
const INK = 0.04;
export const WALL = 0.35;

/** Where the grid lies in the picture, and how many of its cells a pixel's side has. */
export interface SceneWindow extends Grid {
  readonly left: number;
  readonly top: number;
  readonly fine: number;
}

export interface Seen {
  readonly sheet: Mounted;
  readonly projection: Projection;
}

export function paintScene(seen: readonly Seen[], window: SceneWindow): Float32Array {
  const light = new Float32Array(window.width * window.height).fill(WALL);
  const sums = new Float32Array((window.width + 1) * window.height);
  for (const { sheet, projection } of seen) {
    const toGrid = (point: Point): Point => {
      const at = project(projection, point.x, point.y);
      return { x: (at.x - window.left) * window.fine, y: (at.y - window.top) * window.fine };
    };
    const lay = (polygons: readonly (readonly Point[])[], tone: number) => {
      for (const polygon of polygons) addPolygon(sums, window, polygon.map(toGrid));
      takeCoverage(sums, window, (pixel, coverage) => {
        light[pixel] = light[pixel]! * (1 - coverage) + tone * coverage;
      });
    };
    lay([box(0, 0, sheet.drawing.width, sheet.drawing.height)], PAPER);
    for (const { ink, polygons } of byInk(sheet.drawing.shapes)) lay(polygons, ink === 'black' ? INK : PAPER);
  }
  return light;
}

/** Shapes of one ink that follow each other, painted as one. */
function byInk(shapes: readonly Shape[]): { ink: 'black' | 'white'; polygons: Point[][] }[] {
  const groups: { ink: 'black' | 'white'; polygons: Point[][] }[] = [];
  for (const shape of shapes) {
    const ink = shape.kind === 'text' ? 'black' : shape.ink;
    const last = groups.at(-1);
    if (last?.ink === ink) last.polygons.push(...outlines(shape));
    else groups.push({ ink, polygons: outlines(shape) });
  }
  return groups;
}

function outlines(shape: Shape): Point[][] {
  switch (shape.kind) {
    case 'rectangle':
      return [box(shape.at.x, shape.at.y, shape.width, shape.height)];
    case 'polygon':
      return [[...shape.corners]];
    case 'disc':
      return [round(shape.middle, shape.radius)];
    case 'text':
      return strokes(shape);
  }
}

const box = (x: number, y: number, width: number, height: number): Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];

/** A disc as a polygon of its area. */
function round({ x, y }: Point, radius: number): Point[] {
  const sides = 48;
  const out = radius * Math.sqrt((2 * Math.PI) / sides / Math.sin((2 * Math.PI) / sides));
  return Array.from({ length: sides }, (_, index) => {
    const turn = (2 * Math.PI * index) / sides;
    return { x: x + out * Math.cos(turn), y: y + out * Math.sin(turn) };
  });
}
