// Spanish: whose correction it is, and which its body has. Lengths in millimetres.
import { writeSteps, type Scale } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import { write } from './write.ts';

interface Lengths {
  readonly focalLength: number;
  readonly distance: number;
}

/** "85 mm a 4,25 m". */
export const place = ({ focalLength, distance }: Lengths): string =>
  `${write.millimetres(millimetres(focalLength))} a ${write.distance(millimetres(distance))}`;

export const pair = ({ lens, body }: { readonly lens: string; readonly body: string }): string => `${lens} en ${body}`;

/** "entre −20 y +20". */
export const within = ({ min, max, step }: Scale): string =>
  step === 1 ? `entre ${writeSteps(min)} y ${writeSteps(max)}` : `entre ${writeSteps(min)} y ${writeSteps(max)}, en pasos de ${write.number(step)}`;
