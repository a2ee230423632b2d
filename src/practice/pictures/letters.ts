// Words on a print as strokes: what stands there does not matter, that there is something like type does. Each character is an
// upright stroke and two level ones, placed by its code.
import type { Point, Shape } from '../../optics/print/drawing.ts';

type Written = Extract<Shape, { kind: 'text' }>;

export function strokes({ at, size, text, from }: Written): Point[][] {
  const advance = size * 0.55;
  const start = from === 'start' ? at.x : at.x - (text.length * advance) / 2;
  return Array.from(text).flatMap((character, index) => {
    const code = character.codePointAt(0) ?? 32;
    if (code === 32) return [];
    const x = start + index * advance;
    const box = (left: number, bottom: number, width: number, height: number): Point[] => [
      { x: x + left * size, y: at.y - (bottom + height) * size },
      { x: x + (left + width) * size, y: at.y - (bottom + height) * size },
      { x: x + (left + width) * size, y: at.y - bottom * size },
      { x: x + left * size, y: at.y - bottom * size },
    ];
    return [box(0.05 + 0.08 * (code % 4), 0, 0.1, 0.7), box(0.05, 0.1 * (code % 7), 0.38, 0.09), box(0.05, 0.1 * (code % 5) + 0.2, 0.38, 0.09)];
  });
}
