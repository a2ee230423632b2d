// What a sweep begun now would be about: what was told, over what is typed or picked, over the last lens or the last body.
import type { Kit, Situation } from '../../kit/kit.ts';
import { isSameName, onlyFocal, partsOf, pieceOf } from '../../kit/told.ts';
import type { LogRecord } from '../../logbook/record.ts';
import { NOTHING_TOLD } from '../../sweep/named.ts';
import type { Piece, Plan, Subject, Unnamed } from '../../sweep/plan.ts';
import { USUAL_SCALE, type Scale } from '../../sweep/scale.ts';
import { millimetres, steps } from '../../units.ts';
import type { Called, Description } from '../session/session.ts';
import type { Draft } from './draft.ts';

export interface Preview {
  /** What is not in the kit yet has an empty id. */
  readonly parts: Unnamed;
  readonly onBody: Pick<Plan, 'scale' | 'arrows'>;
  /** All of it, for the session. */
  readonly about: Description;
}

interface Known {
  readonly kit: Kit;
  readonly records: readonly LogRecord[];
  /** What is begun with where nothing is typed or picked: the last lens, or only the last body. */
  readonly offers: 'last lens' | 'last body';
}

export function previewOf({ query, picked, about }: Draft, { kit, records, offers }: Known): Preview {
  const last = lastSituation(kit, records);
  const one = picked === null ? null : kit.situations.find(({ id }) => id === picked);
  const body = lastBody(kit, records);
  const typed = query.trim();
  const base = one
    ? ofSituation(one, kit)
    : typed !== ''
      ? ofName(typed, body, kit, records)
      : last && offers === 'last lens'
        ? ofSituation(last, kit)
        : { ...NOTHING_TOLD, body };
  const parts = withTold(base, about, kit);
  const inKit = kit.bodies.find(({ id }) => id === parts.body?.id);
  const scale = about.scale ? scaleOf(about.scale) : (inKit?.scale ?? USUAL_SCALE);
  return { parts, onBody: { scale, arrows: about.arrows ?? inKit?.arrows ?? 'absent' }, about: aboutOf(parts, about) };
}

const scaleOf = ({ min, max, step }: NonNullable<Description['scale']>): Scale => ({ min: steps(min), max: steps(max), step });

const inUse = <Item extends { readonly retired: unknown }>(all: readonly Item[]): Item[] => all.filter(({ retired }) => retired === null);

/** What was measured last, or else the first there is; what only stands in for a lens is nobody's last one. */
export function lastSituation(kit: Kit, records: readonly LogRecord[]): Situation | null {
  const lenses = new Set(inUse(kit.lenses).flatMap(({ id, standIn }) => (standIn ? [] : [id])));
  const situations = inUse(kit.situations).filter(({ lens }) => lenses.has(lens));
  const measured = records.find(({ practice, subject }) => !practice && situations.some(({ id }) => id === subject.situation));
  return situations.find(({ id }) => id === measured?.subject.situation) ?? situations[0] ?? null;
}

/** The body stays on the bench while the lenses change. */
export function lastBody(kit: Kit, records: readonly LogRecord[]): Piece | null {
  const bodies = inUse(kit.bodies);
  const measured = records.find(({ practice }) => !practice)?.subject.situation;
  const last = kit.situations.find(({ id }) => id === measured)?.body;
  const body = bodies.find(({ id }) => id === last) ?? bodies[0];
  return body ? pieceOf(body) : null;
}

const ofSituation = ({ id }: Situation, kit: Kit): Unnamed => partsOf({ situation: id } as Subject, kit);

/** A lens of the kit as it was measured last on this body, or a new one with the focal length it is called by. */
function ofName(name: string, body: Piece | null, kit: Kit, records: readonly LogRecord[]): Unnamed {
  const lens = inUse(kit.lenses).find((one) => isSameName(one.name, name) && !one.standIn);
  if (lens) return ofLens(lens.id, body, kit, records);
  return { ...NOTHING_TOLD, body, lens: { id: '', name }, focalLength: onlyFocal({ name, focal: null }) };
}

function ofLens(id: string, body: Piece | null, kit: Kit, records: readonly LogRecord[]): Unnamed {
  const lens = kit.lenses.find((one) => one.id === id);
  const before = inUse(kit.situations).filter((one) => one.lens === id && one.body === body?.id);
  const measured = records.find(({ subject }) => before.some((one) => one.id === subject.situation))?.subject.situation;
  const situation = before.find((one) => one.id === measured) ?? before[0];
  if (situation) return ofSituation(situation, kit);
  return { ...NOTHING_TOLD, body, lens: lens ? pieceOf(lens) : null, focalLength: lens ? onlyFocal(lens) : null };
}

function withTold(parts: Unnamed, told: Description, kit: Kit): Unnamed {
  const body = told.body ? pieceCalled(told.body, kit.bodies) : parts.body;
  const own = told.lens ? pieceCalled(told.lens, kit.lenses) : null;
  const focal = own && own.id !== parts.lens?.id ? onlyFocal(kit.lenses.find(({ id }) => id === own.id) ?? { name: own.name, focal: null }) : parts.focalLength;
  const converter = told.converter === undefined ? parts.converter : pieceCalled({ id: told.converter ?? '' }, kit.converters);
  return {
    situation: null,
    body,
    lens: own ?? parts.lens,
    converter,
    focalLength: told.focalLength === undefined ? focal : millimetres(told.focalLength),
    distance: told.distance === undefined ? parts.distance : told.distance === null ? null : millimetres(told.distance),
  };
}

function pieceCalled(called: Called, all: readonly Piece[]): Piece | null {
  const known = all.find((one) => ('id' in called ? one.id === called.id : isSameName(one.name, called.name)));
  return known ? pieceOf(known) : 'name' in called ? { id: '', name: called.name } : null;
}

function aboutOf({ body, lens, converter, focalLength, distance }: Unnamed, { scale, arrows }: Description): Description {
  const called = (piece: Piece): Called => (piece.id === '' ? { name: piece.name } : { id: piece.id });
  return {
    ...(body && { body: called(body) }),
    ...(lens && { lens: called(lens) }),
    converter: converter?.id ?? null,
    ...(focalLength !== null && { focalLength }),
    distance,
    ...(scale && { scale }),
    ...(arrows && { arrows }),
  };
}
