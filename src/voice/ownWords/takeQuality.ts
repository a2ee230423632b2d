// Whether a take is good enough to be compared with later, and if not, the sentence that says what to do. Bad takes are
// the commonest reason for words not heard, so each is checked before it is kept.
import type { Recognition } from './recogniser.ts';
import type { Stretch } from './endpoints.ts';

type TakeFault =
  'too quiet' | 'too loud' | 'cut off' | 'too long' | 'too short' | 'unlike the other takes' | 'too like another word';

export interface TakeCheck {
  /** What is wrong, worst first; null when the take is good. */
  readonly fault: TakeFault | null;
  readonly sentence: string;
}

/** What is known of a take beside its sound. */
export interface TakeRecorded {
  readonly stretch: Stretch | null;
  /** The largest sample of the recording, where 1 is the most a microphone can tell. */
  readonly peak: number;
  /** Frames recorded in all. */
  readonly recorded: number;
  readonly long: boolean;
}

/** Decibels over the noise under which takes spoil more than they help: common practice, no source. */
const LEAST_CLEARANCE = 12;
const CLIPPED = 0.99;
/** Frames of quiet wanted after the word. */
const AFTER = 8;
const SHORTEST = 33;
/** Distance to another word against the distance to its own. */
const TOO_LIKE = 0.95;
const UNLIKE = 1.9;

const GOOD: TakeCheck = { fault: null, sentence: 'Good.' };

/** `compared`: the take against the takes there are; null while there are none. */
export function checkTake(word: string, recorded: TakeRecorded, compared: Recognition | null): TakeCheck {
  const { stretch, peak } = recorded;
  if (recorded.long)
    return fault('too long', `That was too long for one word. Say only “${word}”, with quiet before and after it.`);
  if (stretch === null) return fault('too quiet', `Nothing was heard. Come closer and say “${word}” again.`);
  if (peak >= CLIPPED)
    return fault('too loud', `That was too loud for the microphone. Say “${word}” again from further away.`);
  if (stretch.begins <= 1 || recorded.recorded - stretch.ends < AFTER) {
    return fault('cut off', `The word was cut off. Wait for the mark, then say “${word}” and stay quiet after it.`);
  }
  if (stretch.frames.length < SHORTEST) return fault('too short', `That was too short to be “${word}”. Say it again.`);
  if (clearanceOf(stretch) < LEAST_CLEARANCE) {
    return fault(
      'too quiet',
      `“${word}” hardly stood out from the noise. Come closer, speak up or switch the fan off, and say it again.`,
    );
  }
  return compared === null ? GOOD : against(word, compared);
}

function against(word: string, { words, evidence }: Recognition): TakeCheck {
  const own = words.find((one) => one.word === word);
  const other = words.find((one) => one.word !== word);
  if (own && other && other.apart < own.apart * TOO_LIKE) {
    return fault(
      'too like another word',
      `That sounded more like “${other.word}” than “${word}”. Say it again, or choose another word.`,
    );
  }
  if (own && words[0] === own && Math.exp(evidence.apart) > UNLIKE) {
    return fault(
      'unlike the other takes',
      `That was unlike your other takes of “${word}”. Say it the way you will at the camera.`,
    );
  }
  return GOOD;
}

const fault = (name: TakeFault, sentence: string): TakeCheck => ({ fault: name, sentence });

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
