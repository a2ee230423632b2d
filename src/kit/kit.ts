// What a person owns and measures: bodies, lenses, and the situations that one sweep each is about. Names are the
// person's own words; every sentence here is shown to them where a field does not fit.
import * as v from 'valibot';
import type { Millimetres } from '../units.ts';
import { Scale } from '../sweep/scale.ts';
import { ArrowDisplay } from '../sweep/verdict.ts';

const Id = v.pipe(v.string(), v.minLength(1));
const Name = v.pipe(
  v.string(),
  v.trim(),
  v.minLength(1, 'Give it a name you will recognise.'),
  v.maxLength(60, 'Use a name of at most 60 characters.'),
);

export const Body = v.object({ id: Id, name: Name, scale: Scale, arrows: ArrowDisplay });
export type Body = v.InferOutput<typeof Body>;

export const Lens = v.object({ id: Id, name: Name });
export type Lens = v.InferOutput<typeof Lens>;

const length = (least: number, most: number, sentence: string) =>
  v.pipe(v.number(sentence), v.minValue(least, sentence), v.maxValue(most, sentence), v.brand('Millimetres'));

/** Focal lengths and distances a viewfinder autofocus body can meet; what lies outside is a slip of the unit. */
export const FocalLength = length(4, 2000, 'Enter the focal length in millimetres, from 4 to 2000.');
export const Distance = length(50, 500_000, 'Enter the distance in metres, from 0.05 to 500.');

/** A pairing at one focal length and one distance. */
export const Situation = v.object({ id: Id, body: Id, lens: Id, focalLength: FocalLength, distance: Distance });
export type Situation = v.InferOutput<typeof Situation>;

export const Kit = v.object({ bodies: v.array(Body), lenses: v.array(Lens), situations: v.array(Situation) });
export type Kit = v.InferOutput<typeof Kit>;

export const EMPTY_KIT: Kit = { bodies: [], lenses: [], situations: [] };

/** The general-purpose distance: fifty focal lengths (common practice, no source). */
export const usualDistance = (focalLength: Millimetres): Millimetres => (focalLength * 50) as Millimetres;
