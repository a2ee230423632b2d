// Whose correction it is, in words.
import type { Subject } from '../../sweep/plan.ts';
import { inMetres, inMillimetres } from './quantities.ts';

export const subjectInWords = ({ lens, body, focalLength, distance }: Subject): { lens: string; details: string } => ({
  lens,
  details: `${inMillimetres(focalLength)} at ${inMetres(distance)} \u00b7 ${body}`,
});
