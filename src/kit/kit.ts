// What a person owns and measures: bodies, lenses, converters, and the situations that one sweep each is about.
// Names are the person's own words.
import * as v from 'valibot';
import type { Subject } from '../sweep/plan.ts';
import { Body } from './body.ts';
import { Distance, FocalLength } from './lengths.ts';
import { Converter, Lens } from './lens.ts';
import { Id, kept } from './words.ts';

export { Body, newBody } from './body.ts';
export { Distance, FocalLength, usualDistance } from './lengths.ts';
export { Converter, Lens, newConverter, newLens } from './lens.ts';

/** A pairing at one focal length (as engraved on the lens) and one distance. */
export const Situation = v.object({
  ...kept,
  body: Id,
  lens: Id,
  converter: v.nullable(Id),
  focalLength: FocalLength,
  distance: Distance,
});
export type Situation = v.InferOutput<typeof Situation>;

export const Kit = v.object({
  bodies: v.array(Body),
  lenses: v.array(Lens),
  converters: v.array(Converter),
  situations: v.array(Situation),
});
export type Kit = v.InferOutput<typeof Kit>;

export const EMPTY_KIT: Kit = { bodies: [], lenses: [], converters: [], situations: [] };

/** A situation with the kit it is about; each is null when it is not in the kit. */
export interface Pairing {
  readonly body: Body | null;
  readonly lens: Lens | null;
  readonly converter: Converter | null;
}

/** Finds the kit of many situations; build it once for a list. */
export function pairingsOf(kit: Kit): (situation: Situation) => Pairing {
  const bodies = new Map(kit.bodies.map((body) => [body.id, body]));
  const lenses = new Map(kit.lenses.map((lens) => [lens.id, lens]));
  const converters = new Map(kit.converters.map((converter) => [converter.id, converter]));
  return ({ body, lens, converter }) => ({
    body: bodies.get(body) ?? null,
    lens: lenses.get(lens) ?? null,
    converter: converter === null ? null : (converters.get(converter) ?? null),
  });
}

/** The subject of a sweep: names as they stand now. A missing piece of kit is called by what it is. */
export const subjectIn = (kit: Kit, situation: Situation): Subject => subjectFrom(situation, pairingsOf(kit)(situation));

/** The same where the kit of the situation is at hand, for many. */
export function subjectFrom(situation: Situation, { body, lens, converter }: Pairing): Subject {
  const lensName = lens?.name ?? 'Unknown lens';
  return {
    situation: situation.id,
    body: body?.name ?? 'Unknown body',
    lens: situation.converter === null ? lensName : `${lensName} with ${converter?.name ?? 'unknown converter'}`,
    focalLength: situation.focalLength,
    distance: situation.distance,
  };
}
