// Japanese: whose correction it is, and which its body has. Lengths in millimetres.
import { writeSteps, type Scale } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import { write } from './write.ts';

interface Lengths {
  readonly focalLength: number;
  readonly distance: number;
}

/** 「85 mm・距離4.25 m」. */
export const place = ({ focalLength, distance }: Lengths): string =>
  `${write.millimetres(millimetres(focalLength))}・距離${write.distance(millimetres(distance))}`;

export const pair = ({ lens, body }: { readonly lens: string; readonly body: string }): string => `${body}と${lens}`;

/** 「−20〜+20」, and how far apart the corrections are where that is more than one. */
export const within = ({ min, max, step }: Scale): string =>
  step === 1 ? `${writeSteps(min)}〜${writeSteps(max)}` : `${writeSteps(min)}〜${writeSteps(max)}（${write.number(step)}刻み）`;
