// What is fixed when a sweep opens: whose correction is sought, on which scale, and how the person wants to work.
// It is stored whole with the journal, so a record can be read long after kit and settings have changed.
import * as v from 'valibot';
import { Millimetres, Steps } from '../units.ts';
import { Manner } from './manner.ts';
import { Memory } from './memory.ts';
import { Oddity } from './oddity.ts';
import { Scale } from './scale.ts';
import { StoredBench } from './storedBench.ts';
import { Transfer } from './widthTransfer.ts';
import { ArrowDisplay } from './verdict.ts';

/** Whose correction this is, in the person's own words, as they stood when the sweep opened. */
export const Subject = v.object({
  situation: v.string(),
  body: v.string(),
  lens: v.string(),
  focalLength: Millimetres,
  distance: Millimetres,
});
export type Subject = v.InferOutput<typeof Subject>;

/** A piece of the kit, as it was called then. */
const Piece = v.object({ id: v.string(), name: v.string() });
export type Piece = v.InferOutput<typeof Piece>;

/** A sweep may begin before anybody has said whose it is: what was told of it so far, null where nothing was. */
export const Unnamed = v.object({
  situation: v.null(),
  body: v.nullable(Piece),
  lens: v.nullable(Piece),
  /** Null where the lens is straight on the body. */
  converter: v.nullable(Piece),
  focalLength: v.nullable(Millimetres),
  /** Null where it follows the focal length. */
  distance: v.nullable(Millimetres),
});
export type Unnamed = v.InferOutput<typeof Unnamed>;

/** A person who spoils no hold in two hundred, or more than one in ten, is not believed. */
const Lapse = v.pipe(v.number(), v.minValue(0.005), v.maxValue(0.1));

export const Plan = v.object({
  subject: v.variant('situation', [Subject, Unnamed]),
  scale: Scale,
  arrows: ArrowDisplay,
  manner: Manner,
  memory: Memory,
  /** The person's own share of spoilt holds, measured in training; without it the usual one counts. */
  lapse: v.optional(Lapse),
  /** The value the body is set to when the sweep opens. */
  start: Steps,
  /** Null with real kit; with the practice camera, the seed that its band and its light come from. */
  practice: v.nullable(
    v.object({
      seed: v.pipe(v.number(), v.integer(), v.minValue(0)),
      /** To meet a band that no correction reaches whole. */
      band: v.optional(v.literal('past the limit')),
      /** In a width transfer: how far its ring is turned, in corrections. */
      shift: v.optional(v.pipe(v.number(), v.integer())),
      /** What is wrong with it. */
      oddity: v.exactOptional(Oddity),
    }),
  ),
  /** Where this is the second series of a width transfer: the finished sweep that it belongs to. */
  transfer: v.optional(Transfer),
  /** How the rig was set up, where the person walked through it. */
  bench: v.optional(StoredBench),
});
export type Plan = v.InferOutput<typeof Plan>;
