// From what a person chose to the situations a plan is made of: every body with every lens, bare and with each chosen
// converter, at the chosen ends and distances.
import type { Kit, Lens } from '../../kit/kit.ts';
import { usualDistance } from '../../kit/lengths.ts';
import { failed, got, type Result } from '../../result.ts';
import { millimetres, type Millimetres } from '../../units.ts';

export type ZoomEnds = 'both' | 'wide' | 'tele';

export interface Wanted {
  readonly bodies: readonly string[];
  readonly lenses: readonly string[];
  /** Beside the bare lens. */
  readonly converters: readonly string[];
  readonly ends: ZoomEnds;
  /** Empty: fifty focal lengths each, those of lens and converter together. */
  readonly distances: readonly Millimetres[];
}

export interface WantedSituation {
  readonly body: string;
  readonly lens: string;
  readonly converter: string | null;
  readonly focalLength: Millimetres;
  readonly distance: Millimetres;
}

/** Why nothing can be planned; `lens`: the name of the one whose focal length nobody has told. */
export type WantedFault = { readonly is: 'no body' | 'no lens' } | { readonly is: 'no focal length'; readonly lens: string };

export function situationsWanted(wanted: Wanted, kit: Pick<Kit, 'lenses' | 'converters'>): Result<WantedSituation[], WantedFault> {
  if (wanted.bodies.length === 0) return failed({ is: 'no body' });
  if (wanted.lenses.length === 0) return failed({ is: 'no lens' });
  const lenses = kit.lenses.filter(({ id }) => wanted.lenses.includes(id));
  const unknown = lenses.find(({ focal }) => focal === null);
  if (unknown) return failed({ is: 'no focal length', lens: unknown.name });
  const chosen = kit.converters.filter(({ id }) => wanted.converters.includes(id));
  const behind = [{ id: null, factor: 1 }, ...chosen];
  return got(
    wanted.bodies.flatMap((body) =>
      lenses.flatMap((lens) =>
        behind.flatMap(({ id: converter, factor }) =>
          lengthsOf(lens, wanted.ends).flatMap((focalLength) =>
            distancesFor(millimetres(focalLength * factor), wanted.distances).map((distance) => ({ body, lens: lens.id, converter, focalLength, distance })),
          ),
        ),
      ),
    ),
  );
}

function lengthsOf({ focal }: Lens, ends: ZoomEnds): Millimetres[] {
  if (!focal) return [];
  if (focal.from === focal.to) return [focal.from];
  return ends === 'both' ? [focal.from, focal.to] : [ends === 'wide' ? focal.from : focal.to];
}

const distancesFor = (focalLength: Millimetres, distances: readonly Millimetres[]): readonly Millimetres[] =>
  distances.length > 0 ? distances : [usualDistance(focalLength)];
