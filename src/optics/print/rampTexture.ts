// Upright bars down the middle of the ramp, for a program: whatever the height, they have edges there, so the blur of
// these edges follows depth without a break. They zigzag, as an edge along the rows of pixels would fall on the same places
// of all pixels, and their widths go from coarse to fine without repeating: a coarse one where the ramp looks small.
import { radians } from '../quantity.ts';
import type { Point, Shape } from './drawing.ts';
import { LEANS } from './marks.ts';
import { LEFT_MARKS, RAMP_WIDTH, type RampLayout } from './rampLayout.ts';

/** Black and white by turns from the left, black first, in millimetres. */
const WIDTHS = [12, 7, 5, 3, 2] as const;
export const TEXTURE_WIDTH = WIDTHS.reduce((sum, width) => sum + width, 0);
/** About the length that runs one way. */
const STRETCH = 16;

/** One straight stretch of one edge, in millimetres of the page; `dark` says on which side of it black lies. */
export interface TextureEdge {
  readonly from: Point;
  readonly to: Point;
  readonly dark: 'left' | 'right';
}

/** The edges from left to right, each from its lower end to its upper. */
const edgeLines = ({ zero, half }: RampLayout): Point[][] => {
  const stretches = 2 * Math.max(2, Math.round(half / STRETCH));
  const each = (2 * half) / stretches;
  const shift = each * Math.tan(radians(LEANS.target));
  const offsets = [0, ...WIDTHS.map((_, index) => WIDTHS.slice(0, index + 1).reduce((sum, width) => sum + width, 0))];
  const left = (RAMP_WIDTH - TEXTURE_WIDTH - shift) / 2;
  return offsets.map((offset) =>
    Array.from({ length: stretches + 1 }, (_, joint) => ({ x: left + offset + (joint % 2) * shift, y: zero + half - joint * each })),
  );
};

export const drawTexture = (layout: RampLayout): Shape[] => {
  const lines = edgeLines(layout);
  return lines.flatMap((line, index): Shape[] =>
    index % 2 === 0 ? [{ kind: 'polygon', corners: [...line, ...(lines[index + 1] ?? []).toReversed()], ink: 'black' }] : [],
  );
};

export const textureEdges = (layout: RampLayout): TextureEdge[] =>
  edgeLines(layout).flatMap((line, index) =>
    line.slice(1).map((to, joint): TextureEdge => ({ from: line[joint] ?? to, to, dark: index % 2 === 0 ? 'right' : 'left' })),
  );

/** The bars and the white beside them, from 0 at the middles of the left marks to 1 at those of the right ones. */
export function textureStripes(): { readonly from: number; readonly to: number; readonly black: boolean }[] {
  const share = (x: number): number => (x - LEFT_MARKS) / (RAMP_WIDTH - 2 * LEFT_MARKS);
  const ends = [-4, 0, ...WIDTHS.map((_, index) => WIDTHS.slice(0, index + 1).reduce((sum, width) => sum + width, 0)), TEXTURE_WIDTH + 4];
  const left = (RAMP_WIDTH - TEXTURE_WIDTH) / 2;
  return ends.slice(1).map((end, index) => ({ from: share(left + (ends[index] ?? 0)), to: share(left + end), black: index % 2 === 1 }));
}
