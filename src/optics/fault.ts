// What does not fit at the bench, as data. The catalogue has a sentence for each that says what to do.
import type { Millimetres } from '../units.ts';
import type { MeasuredFrom } from './measuredFrom.ts';
import type { DistanceUnit, WrittenMeasure } from './writtenLength.ts';

/** Faults that need no more than their name: a schema's message may be one. */
export const PLAIN_FAULTS = [
  'no aperture',
  'no factor',
  'no focal length',
  'focal length unread',
  'no distance',
  'no measured distance',
  'no reach',
  'no magnification',
  'no length on the target',
  'no pixels',
  'no pixels spanned',
  'no pixel pitch',
  'no width of a photograph',
  'no sensor width',
  'no sensor height',
  'no circle of confusion',
  'no area',
  'no step worth',
  'no exposure',
  'no iso speed',
  'no shutter',
  'no light value',
  'plenty below fine',
  'no angle',
  'no reflection',
  'no offset on the sensor',
  'offset beyond the picture',
  'no spot',
  'no sides',
  'no rectangle',
  'rectangle of nothing',
  'tilt without a rig',
  'target too large',
  'no drawn length',
  'no printed length',
  'no ramp line',
  'no ramp length',
  'no set-back',
  'set-back too large',
  'lean too steep or flat',
  'no share',
  'depth without end',
  'share beyond the range',
  'share without a rig',
  'no stored correction',
  'no such correction',
  'no temperature',
  'does not fit',
] as const;
export type PlainFault = (typeof PLAIN_FAULTS)[number];

export type BenchFault =
  | { readonly is: PlainFault }
  | { readonly is: 'distance unread' | 'distance out of range'; readonly unit: DistanceUnit }
  /** The text can mean two that are both possible. */
  | { readonly is: 'two lengths'; readonly text: string; readonly one: readonly WrittenMeasure[]; readonly other: readonly WrittenMeasure[] }
  | { readonly is: 'two numbers'; readonly text: string; readonly one: number; readonly other: number }
  | { readonly is: 'focal length in another unit'; readonly typed: readonly WrittenMeasure[]; readonly meant: Millimetres }
  | { readonly is: 'focal length in metres'; readonly typed: number; readonly meant: Millimetres }
  | { readonly is: 'nearer than its closest focus'; readonly wanted: Millimetres; readonly closest: Millimetres; readonly unit: DistanceUnit }
  | { readonly is: 'no focus so near'; readonly focalLength: Millimetres; readonly distance: Millimetres; readonly from: MeasuredFrom }
  | { readonly is: 'tilt too large'; readonly most: number }
  | { readonly is: 'print misread'; readonly drawn: Millimetres };

/** The fault of a field, where a schema wants a message. */
export const plain = (fault: PlainFault): PlainFault => fault;
