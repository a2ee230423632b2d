// Whether a take is good enough to be compared with later, and if not, why. Bad takes are the commonest reason for words not
// heard, so each is checked before it is kept.
import type { Recognition } from './recogniser.ts';
import type { Stretch } from './pieces.ts';

/** What is wrong with a take. */
export type TakeFault =
  | { readonly is: 'not heard' | 'too quiet' | 'too loud' | 'cut off' | 'too long' | 'too short' | 'unlike the other takes' }
  | { readonly is: 'too like another word'; readonly other: string };

/** What is known of a take beside its sound. */
export interface TakeRecorded {
  readonly stretch: Stretch | null;
  /** The largest sample of the recording, where 1 is the most a microphone can tell. */
  readonly peak: number;
  readonly long: boolean;
}

/** Decibels over the noise under which takes spoil more than they help: common practice, no source. */
const LEAST_CLEARANCE = 12;
const CLIPPED = 0.99;
const SHORTEST = 33;
/** Distance to another word against the distance to its own. */
const TOO_LIKE = 0.95;
const UNLIKE = 1.9;

/** The worst that is wrong, null when the take is good; `compared`: the take against those there are, null while there are none. */
export function takeFaultOf(word: string, recorded: TakeRecorded, compared: Recognition | null): TakeFault | null {
  const { stretch, peak } = recorded;
  if (recorded.long) return { is: 'too long' };
  if (stretch === null) return { is: 'not heard' };
  if (peak >= CLIPPED) return { is: 'too loud' };
  // Its end needs no such check: a recording ends once the word is followed by quiet, or only rings on.
  if (stretch.begins <= 1) return { is: 'cut off' };
  if (stretch.frames.length < SHORTEST) return { is: 'too short' };
  if (clearanceOf(stretch) < LEAST_CLEARANCE) return { is: 'too quiet' };
  return compared === null ? null : against(word, compared);
}

function against(word: string, { words, evidence }: Recognition): TakeFault | null {
  const own = words.find((one) => one.word === word);
  const other = words.find((one) => one.word !== word);
  if (own && other && other.apart < own.apart * TOO_LIKE) return { is: 'too like another word', other: other.word };
  return own && words[0] === own && Math.exp(evidence.apart) > UNLIKE ? { is: 'unlike the other takes' } : null;
}

/** Decibels of the word's loudest part over the noise. */
export function clearanceOf({ frames, noise }: Pick<Stretch, 'frames' | 'noise'>): number {
  const sum = (frame: Float32Array) => frame.reduce((total, power) => total + power, 0);
  const loud = frames
    .map(sum)
    .sort((a, b) => b - a)
    .slice(0, Math.max(1, frames.length >> 2));
  const mean = loud.reduce((total, power) => total + power, 0) / loud.length;
  return 10 * Math.log10(Math.max(1e-12, mean - sum(noise)) / Math.max(1e-20, sum(noise)));
}
