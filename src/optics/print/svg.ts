// A drawing as SVG whose user unit is one millimetre, so that a browser prints it at true size. Numbers keep a
// micrometre.
import type { Drawing, Point, Shape } from './drawing.ts';

/** Safe between tags and inside quotes. */
export const escapeText = (text: string): string =>
  text
    // Control characters and broken surrogates cannot stand in XML at all.
    .replaceAll(/[^\P{Cc}\t\n\r]|\p{Cs}|[\ufffe\uffff]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');

const length = (value: number): string => String(Number(value.toFixed(3)));
const point = ({ x, y }: Point): string => `${length(x)},${length(y)}`;
const INK = { black: '#000', white: '#fff' } as const;

export function shapeToSvg(shape: Shape): string {
  switch (shape.kind) {
    case 'rectangle': {
      const { at, width, height, ink } = shape;
      return `<rect x="${length(at.x)}" y="${length(at.y)}" width="${length(width)}" height="${length(height)}" fill="${INK[ink]}"/>`;
    }
    case 'polygon':
      return `<polygon points="${shape.corners.map(point).join(' ')}" fill="${INK[shape.ink]}"/>`;
    case 'disc': {
      const { middle, radius, ink } = shape;
      return `<circle cx="${length(middle.x)}" cy="${length(middle.y)}" r="${length(radius)}" fill="${INK[ink]}"/>`;
    }
    case 'text': {
      const { at, size, from } = shape;
      const place = `x="${length(at.x)}" y="${length(at.y)}" font-size="${length(size)}" text-anchor="${from}"`;
      return `<text ${place} font-family="sans-serif">${escapeText(shape.text)}</text>`;
    }
  }
}

/** The part of a drawing that lies in a window, placed on a page; what lies outside the window is cut off. */
export const windowToSvg = (drawing: Drawing, on: Point, from: Point, width: number, height: number): string =>
  `<svg x="${length(on.x)}" y="${length(on.y)}" width="${length(width)}" height="${length(height)}"` +
  ` viewBox="${length(from.x)} ${length(from.y)} ${length(width)} ${length(height)}" overflow="hidden">` +
  `${drawing.shapes.map(shapeToSvg).join('')}</svg>`;

/** A whole page, with what stands on it already written. */
export const pageToSvg = (width: number, height: number, title: string, content: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${length(width)}mm" height="${length(height)}mm"` +
  ` viewBox="0 0 ${length(width)} ${length(height)}" role="img" aria-label="${escapeText(title)}">${content}</svg>`;
