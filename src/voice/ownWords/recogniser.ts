// Compares a stretch of sound with every take of every word, and says how sure it is of the nearest.
import { align } from './alignment.ts';
import { bandsAt, type SoundFrame } from './bands.ts';
import type { Cepstra } from './cepstra.ts';
import { inScene, sceneOf, speechOf, type Scene, type SpeechAlone } from './inNoise.ts';
import { scatterOf, type Measure } from './scatter.ts';
import { sureness, type Likeness } from './sureness.ts';
import { soundOf, type Take } from './take.ts';

interface Sound {
  readonly frames: readonly SoundFrame[];
  readonly noise: SoundFrame;
}

/** A word and how far the sound is from it: the mean over its nearest takes. */
interface WordDistance {
  readonly word: string;
  readonly apart: number;
  readonly worst: number;
  readonly warped: number;
}

export interface Recognition {
  /** Nearest first, over all words taught. */
  readonly words: readonly WordDistance[];
  /** Log odds that the nearest was said, and not something else. */
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

/** So many of a word's takes, the nearest, stand for it. */
const NEAREST = 3;

interface Kept {
  readonly word: string;
  readonly speech: SpeechAlone;
  readonly sound: Sound;
}

/** What is usual for a word said again: half its own, half that of all words, as five takes are few. */
interface Usual {
  readonly apart: number;
  readonly worst: number;
  readonly warped: number;
  readonly length: number;
}

/** Bands are compared as far as all takes and the microphone reach. */
const narrowed = ({ frames, noise }: Sound, bands: number): Sound =>
  noise.length === bands ? { frames, noise } : { frames: frames.map((f) => f.slice(0, bands)), noise: noise.slice(0, bands) };

/**
 * `rate`: the sample rate of the microphone that will be heard. Takes from another microphone may have more or fewer
 * bands.
 */
export function recogniserOf(takes: readonly Take[], rate: number): Recogniser {
  const sounds = takes.map((take) => ({ word: take.word, sound: soundOf(take) }));
  const bands = Math.min(bandsAt(rate), ...sounds.map(({ sound }) => sound.noise.length));
  const kept = sounds.map(({ word, sound: whole }): Kept => {
    const sound = narrowed(whole, bands);
    return { word, sound, speech: speechOf(sound.frames, sound.noise) };
  });
  const byWord = new Map<string, Kept[]>();
  for (const one of kept) byWord.set(one.word, [...(byWord.get(one.word) ?? []), one]);
  const scenes = new Map(kept.map((one) => [one, sceneOf(one.sound.frames, one.sound.noise)]));
  const measured = scatterOf([...byWord.values()].map((list) => list.map((one) => shapeIn(scenes, one))));
  const usual = usualOf(byWord, scenes, measured);

  return {
    words: [...byWord.keys()],
    recognise: (whole) => {
      if (kept.length === 0) return null;
      const sound = narrowed(whole, bands);
      const scene = sceneOf(sound.frames, sound.noise);
      const shape = measured(scene.shape);
      const words = [...byWord].map(([word, list]) => comparedWith(word, list, shape, scene, measured)).sort((a, b) => a.apart - b.apart);
      const [first, second] = words as [WordDistance, ...WordDistance[]];
      const evidence = evidenceOf(first, second, usual, sound.frames.length);
      return { words, sureness: sureness(evidence), evidence, clearance: scene.clearance };
    },
  };
}

function shapeIn(scenes: ReadonlyMap<Kept, Scene>, one: Kept): Cepstra {
  return scenes.get(one)!.shape;
}

function comparedWith(word: string, takes: readonly Kept[], shape: Cepstra, scene: Scene, measured: Measure): WordDistance {
  const all = takes.map(({ speech }) => align(shape, measured(inScene(speech, scene)))).sort((a, b) => a.apart - b.apart);
  const near = all.slice(0, NEAREST);
  return {
    word,
    apart: mean(near.map(({ apart }) => apart)),
    worst: mean(near.map(({ worst }) => worst)),
    warped: mean(near.map(({ warped }) => warped)),
  };
}

/** Each take is compared with the others of its word as if it were heard now. */
function usualOf(byWord: ReadonlyMap<string, readonly Kept[]>, scenes: ReadonlyMap<Kept, Scene>, measured: Measure): Map<string, Usual> {
  const again = new Map(
    [...byWord].map(([word, list]) => [
      word,
      list.length < 2
        ? []
        : list.map((one) => {
            const scene = scenes.get(one)!;
            return comparedWith(
              word,
              list.filter((other) => other !== one),
              measured(scene.shape),
              scene,
              measured,
            );
          }),
    ]),
  );
  const all = [...again.values()].flat();
  const blend = (own: readonly WordDistance[], key: 'apart' | 'worst' | 'warped'): number => {
    const general = all.length > 0 ? mean(all.map((one) => one[key])) : 1;
    return own.length > 0 ? (general + mean(own.map((one) => one[key]))) / 2 : general;
  };
  return new Map(
    [...byWord].map(([word, list]) => {
      const own = again.get(word) ?? [];
      const length = mean(list.map(({ sound }) => sound.frames.length));
      return [word, { apart: blend(own, 'apart'), worst: blend(own, 'worst'), warped: blend(own, 'warped'), length }];
    }),
  );
}

function evidenceOf(first: WordDistance, second: WordDistance | undefined, usual: ReadonlyMap<string, Usual>, length: number): Likeness {
  const own = usual.get(first.word)!;
  return {
    apart: Math.log(first.apart / own.apart),
    // With one word taught there is nothing to be nearer than.
    lead: second === undefined ? Math.log(0.7) : Math.log(first.apart / second.apart),
    length: Math.log(length / own.length),
    worst: first.worst / own.worst,
    warped: first.warped - own.warped,
  };
}

const mean = (list: readonly number[]): number => list.reduce((total, value) => total + value, 0) / Math.max(1, list.length);
