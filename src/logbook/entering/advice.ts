// What to enter for one lens on one body: for the bare lens and behind each converter, which the body keeps apart, one
// value or one for each end of a zoom, out of all that was measured; and what could not be counted, with the reason.
import type { Body, Converter, Kit, Lens } from '../../kit/kit.ts';
import { zooms } from '../../kit/lens.ts';
import type { Subject } from '../../sweep/plan.ts';
import type { Steps } from '../../units.ts';
import type { Measured } from '../measured.ts';
import type { Shelved } from '../shelf.ts';
import { bandOf, type Band } from './band.ts';
import { oneValue, type Choice, type Weighing } from './oneValue.ts';
import { shownThere, type ShownThere } from './shown.ts';
import { tradeOf } from './trade.ts';
import { twoValues, type TwoValues } from './twoValues.ts';

export interface Evidence {
  readonly band: Band;
  readonly measured: Measured;
}

interface Uncounted {
  readonly id: string;
  readonly focalLength: number;
  readonly distance: number;
  readonly why: 'never measured' | 'only a value is known' | 'past the limit' | 'beyond the scale' | 'nothing held';
}

/** One place in the body's memory, or two for a zoom. */
export interface MemoryPlace {
  readonly converter: Converter | null;
  readonly evidence: readonly Evidence[];
  readonly uncounted: readonly Uncounted[];
  /** What photographs say of each of its situations. */
  readonly shown: readonly ShownThere[];
  /** Null where no band is known. */
  readonly one: (Choice & { readonly trade: readonly Choice[] }) | null;
  /** Where the body keeps both ends and both were measured; then these are to be entered. */
  readonly two: TwoValues | null;
  /** The body keeps both ends, but one of them was not measured yet. */
  readonly missingEnd: number | null;
  /** Where no band is known: what the one bracket there is says on its own. */
  readonly byPictures: { readonly value: Steps; readonly subject: Subject } | null;
}

export interface Advice {
  readonly body: Body;
  readonly lens: Lens;
  readonly places: readonly MemoryPlace[];
}

/** Null where body or lens are not in the kit. */
export function adviceOnEntering(
  pair: { readonly body: string; readonly lens: string },
  kit: Kit,
  shelf: readonly Shelved[],
  weighing: Weighing,
): Advice | null {
  const body = kit.bodies.find(({ id }) => id === pair.body);
  const lens = kit.lenses.find(({ id }) => id === pair.lens);
  if (!body || !lens) return null;
  const own = shelf.filter(({ situation, retired }) => situation?.body === body.id && situation.lens === lens.id && !retired);
  const places = [null, ...kit.converters]
    .map((converter) =>
      placeOf(
        body,
        lens,
        converter,
        own.filter(({ situation }) => situation?.converter === (converter?.id ?? null)),
        weighing,
      ),
    )
    .filter(({ evidence, uncounted }) => evidence.length + uncounted.length > 0);
  return { body, lens, places };
}

function placeOf(body: Body, lens: Lens, converter: Converter | null, shelf: readonly Shelved[], weighing: Weighing): MemoryPlace {
  const sorted = shelf.toSorted((a, b) => a.subject.focalLength - b.subject.focalLength || a.subject.distance - b.subject.distance);
  const shown = sorted.flatMap((shelved) => shownThere(shelved, body.scale) ?? []);
  const brackets = new Map(shown.map(({ subject, bracket }) => [subject.situation, bracket]));
  const evidence = sorted.flatMap(({ subject, measured }) => {
    const band = measured && bandOf(measured, body.scale);
    const bracket = brackets.get(subject.situation);
    return band ? [{ band: bracket?.is === 'agree' ? { ...band, centre: bracket.joint.value } : band, measured }] : [];
  });
  const counted = new Set(evidence.map(({ band }) => band.id));
  const uncounted = sorted
    .filter(({ subject }) => !counted.has(subject.situation))
    .map(({ subject, measured }) => ({ id: subject.situation, focalLength: subject.focalLength, distance: subject.distance, why: whyNot(measured) }));
  const bands = evidence.map(({ band }) => band);
  const one = oneValue(body.scale, bands, weighing);
  const keepsTwo = body.zoomStore === 'two' && zooms(lens) && lens.focal !== null;
  const two = keepsTwo && lens.focal ? twoValues(body.scale, lens.focal, bands, weighing) : null;
  const missingEnd =
    keepsTwo && !two ? ([lens.focal?.from, lens.focal?.to].find((end) => bands.every(({ focalLength }) => focalLength !== end)) ?? null) : null;
  return {
    converter,
    evidence,
    uncounted,
    shown,
    one: one && { ...one, trade: tradeOf(body.scale, bands) },
    two,
    missingEnd,
    byPictures: one ? null : onlyBracket(shown),
  };
}

/** Several on their own say nothing of how far one value may be from each. */
function onlyBracket(shown: readonly ShownThere[]): MemoryPlace['byPictures'] {
  const values = shown.flatMap(({ subject, bracket }) => (bracket?.is === 'alone' && bracket.value !== null ? [{ value: bracket.value, subject }] : []));
  const [only] = values;
  return only && values.length === 1 ? only : null;
}

function whyNot(measured: Measured | null): Uncounted['why'] {
  switch (measured?.found) {
    case undefined:
      return 'never measured';
    case 'nothing':
      return 'nothing held';
    case 'past the limit':
    case 'beyond the scale':
      return measured.found;
    case 'carried over':
      return 'beyond the scale';
    case 'band':
    case 'value':
      return 'only a value is known';
  }
}
