// German: whose correction it is, and which its body has. Lengths in millimetres.
import { writeSteps, type Scale } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import { write } from './write.ts';

interface Lengths {
  readonly focalLength: number;
  readonly distance: number;
}

/** "85 mm auf 4,25 m". */
export const place = ({ focalLength, distance }: Lengths): string =>
  `${write.millimetres(millimetres(focalLength))} auf ${write.distance(millimetres(distance))}`;

export const pair = ({ lens, body }: { readonly lens: string; readonly body: string }): string => `${lens} an ${body}`;

/** "von −20 bis +20". */
export const within = ({ min, max, step }: Scale): string =>
  step === 1 ? `von ${writeSteps(min)} bis ${writeSteps(max)}` : `von ${writeSteps(min)} bis ${writeSteps(max)}, in Stufen von ${write.number(step)}`;
