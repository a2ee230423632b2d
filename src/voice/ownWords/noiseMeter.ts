// How well the person stands out from the room, in one number and one plain sentence, for the hearing check.
import { clearanceOf } from './takeQuality.ts';
import type { Stretch } from './endpoints.ts';

/** Measured on digits in simulated rooms: at 12 dB nine words in ten are still nearest to themselves. */
const ENOUGH = 12;
const GOOD = 20;

export interface HearingAdvice {
  /** Decibels of the word over the noise. */
  readonly clearance: number;
  readonly enough: boolean;
  readonly sentence: string;
}

export function adviceFor(stretch: Pick<Stretch, 'frames' | 'noise'>): HearingAdvice {
  const clearance = clearanceOf(stretch);
  if (clearance >= GOOD) return { clearance, enough: true, sentence: 'You are heard well.' };
  if (clearance >= ENOUGH) {
    return {
      clearance,
      enough: true,
      sentence: 'You are heard, but some words may be asked for again. Closer would be better.',
    };
  }
  return {
    clearance,
    enough: false,
    sentence: 'The room is too loud for this distance. Come closer, or use the switch.',
  };
}
