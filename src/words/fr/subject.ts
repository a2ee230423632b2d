// French: whose correction it is, and which its body has. Lengths in millimetres.
import { writeSteps, type Scale } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import { write } from './write.ts';

interface Lengths {
  readonly focalLength: number;
  readonly distance: number;
}

/** "85 mm à 4,25 m". */
export const place = ({ focalLength, distance }: Lengths): string =>
  `${write.millimetres(millimetres(focalLength))} à ${write.distance(millimetres(distance))}`;

export const pair = ({ lens, body }: { readonly lens: string; readonly body: string }): string => `${lens} sur ${body}`;

/** "de −20 à +20". */
export const within = ({ min, max, step }: Scale): string =>
  step === 1 ? `de ${writeSteps(min)} à ${writeSteps(max)}` : `de ${writeSteps(min)} à ${writeSteps(max)}, par pas de ${write.number(step)}`;
