// Compares a stretch of sound with every take of every word, and says how sure it is of the nearest.
import { bandsAt, type SoundFrame } from './bands.ts';
import { sceneOf, speechOf, type Scene, type SpeechAlone } from './inNoise.ts';
import { nearestOf, type Likeness } from './likeness.ts';
import { scatterOf } from './scatter.ts';
import { sureness } from './sureness.ts';
import { soundOf, type Take } from './take.ts';
import { usualOf } from './usual.ts';
import { distanceTo, type WordDistance } from './wordDistance.ts';

interface Sound {
  readonly frames: readonly SoundFrame[];
  readonly noise: SoundFrame;
}

export interface Recognition {
  /** Nearest first, over all words taught. */
  readonly words: readonly WordDistance[];
  /** Log odds that the nearest was said, and not another or something else. */
  readonly sureness: number;
  readonly evidence: Likeness;
  /** Decibels over the noise. */
  readonly clearance: number;
}

export interface Recogniser {
  readonly words: readonly string[];
  /** Null when nothing is taught. */
  recognise(sound: Sound): Recognition | null;
}

interface Kept {
  readonly taught: boolean;
  readonly speech: SpeechAlone;
  readonly scene: Scene;
}

/** Bands are compared as far as all takes and the microphone reach. */
const narrowed = ({ frames, noise }: Sound, bands: number): Sound =>
  noise.length === bands ? { frames, noise } : { frames: frames.map((f) => f.slice(0, bands)), noise: noise.slice(0, bands) };

/**
 * `rate`: the sample rate of the microphone that will be heard. Takes from another microphone may have more or fewer
 * bands.
 */
export function recogniserOf(takes: readonly Take[], rate: number): Recogniser {
  const sounds = takes.map((take) => ({ word: take.word, taught: !take.learned, sound: soundOf(take) }));
  const bands = Math.min(bandsAt(rate), ...sounds.map(({ sound }) => sound.noise.length));
  const byWord = new Map<string, Kept[]>();
  for (const { word, taught, sound } of sounds) {
    const { frames, noise } = narrowed(sound, bands);
    byWord.set(word, [...(byWord.get(word) ?? []), { taught, speech: speechOf(frames, noise), scene: sceneOf(frames, noise) }]);
  }
  const measured = scatterOf([...byWord.values()].map((list) => list.map(({ scene }) => scene.shape)));
  const speechIn = (list: readonly Kept[]): SpeechAlone[] => list.map(({ speech }) => speech);
  // What was learned elsewhere brings a word nearer, and makes nothing usual that was not: takes that were taught are compared
  // with all others.
  const again = [...byWord].map(([word, list]): [string, WordDistance[]] => {
    const taught = list.length < 2 ? [] : list.filter((one) => one.taught);
    return [word, taught.map((one) => distanceTo(word, speechIn(list.filter((other) => other !== one)), one.scene, measured))];
  });
  const usual = usualOf(new Map(again), new Map([...byWord].map(([word, list]) => [word, list.map(({ scene }) => scene.shape.length)])));

  return {
    words: [...byWord.keys()],
    recognise: (whole) => {
      const { frames, noise } = narrowed(whole, bands);
      const scene = sceneOf(frames, noise);
      const nearest = nearestOf(
        [...byWord].map(([word, list]) => distanceTo(word, speechIn(list), scene, measured)),
        usual,
        frames.length,
      );
      if (nearest === null) return null;
      const { words, likeness } = nearest;
      return { words, sureness: sureness(likeness), evidence: likeness, clearance: scene.clearance };
    },
  };
}
