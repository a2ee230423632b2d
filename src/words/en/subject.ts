// English: whose correction it is. Lengths in millimetres.
import { millimetres } from '../../units.ts';
import { write } from './write.ts';

interface Lengths {
  readonly focalLength: number;
  readonly distance: number;
}

/** "85 mm at 4.25 m". */
export const place = ({ focalLength, distance }: Lengths): string => `${write.millimetres(millimetres(focalLength))} at ${write.metres(millimetres(distance))}`;

export const pair = ({ lens, body }: { readonly lens: string; readonly body: string }): string => `${lens} on ${body}`;
