// Every lens of one body with its situations: how the card and the glance at a body are ordered.
import type { Body, Kit } from '../kit/kit.ts';
import type { Shelved } from './shelf.ts';

export interface LensOn<Line> {
  /** With the converter, as the sweep had it. */
  readonly name: string;
  readonly serial: string | null;
  readonly lines: readonly Line[];
}

/** Where a line stands among those of its lens. */
interface Placed {
  readonly focalLength: number;
  readonly distance: number;
}

/**
 * Lenses by name, each from short to long and from near to far; nothing retired, and only situations of which a line can be
 * made: `lineOf` answers null for the others. A lens behind a converter is a lens of its own.
 */
export function lensesOn<Line extends Placed>(
  body: Pick<Body, 'id'>,
  kit: Kit,
  shelf: readonly Shelved[],
  lineOf: (shelved: Shelved) => Line | null,
): LensOn<Line>[] {
  const serials = new Map(kit.lenses.map(({ id, serial }) => [id, serial]));
  const lenses = new Map<string, { name: string; serial: string | null; lines: Line[] }>();
  for (const shelved of shelf) {
    const { situation, subject, retired } = shelved;
    const line = lineOf(shelved);
    if (!situation || situation.body !== body.id || retired || !line) continue;
    const key = `${situation.lens} ${situation.converter ?? ''}`;
    const lens = lenses.get(key) ?? { name: subject.lens, serial: serials.get(situation.lens) ?? null, lines: [] };
    lens.lines.push(line);
    lenses.set(key, lens);
  }
  for (const { lines } of lenses.values()) lines.sort((a, b) => a.focalLength - b.focalLength || a.distance - b.distance);
  return [...lenses.values()].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
}
