// Made-up words for the tests: a buzzing voice whose two resonances glide from one vowel to the next, with hisses
// between, over a room's noise. Every take differs a little, by its seed.
import { chanceFrom } from '../../bench/hearing/chance.ts';

export type Sound = 'a' | 'i' | 'u' | 'e' | 's';
const RESONANCES: Record<Exclude<Sound, 's'>, readonly [number, number]> = {
  a: [750, 1300],
  i: [300, 2300],
  u: [320, 800],
  e: [520, 1900],
};

export const WORDS: Readonly<Record<string, readonly Sound[]>> = {
  solid: ['s', 'a', 'i'],
  undo: ['u', 'e', 'u'],
  left: ['e', 'a', 's'],
  repeat: ['i', 'u', 'i'],
};

/** About half a second of the word. */
export function say(sounds: readonly Sound[], rate: number, seed: number, loud = 0.1): Float32Array {
  const { next } = chanceFrom(seed + 1);
  const pitch = 110 + 20 * next();
  const each = Math.round(rate * (0.14 + 0.03 * next()));
  const out = new Float32Array(each * sounds.length);
  // White noise has the same power a hertz at every rate.
  const hiss = 0.6 * Math.sqrt(rate / 16_000);
  let phase = 0;
  for (const [index, sound] of sounds.entries()) {
    const here = sound === 's' ? null : RESONANCES[sound];
    const then = sounds[index + 1];
    const to = then === undefined || then === 's' ? here : RESONANCES[then];
    for (let i = 0; i < each; i++) {
      const t = i / each;
      phase += pitch / rate;
      let value = here === null ? (next() - 0.5) * hiss : 0;
      if (here !== null && to !== null) {
        const f = here.map((from, k) => from + ((to[k] ?? from) - from) * Math.max(0, 2 * t - 1));
        for (let h = 1; h * pitch < Math.min(3600, rate / 2); h++) {
          const near = f.reduce((sum, at) => sum + 1 / (1 + ((h * pitch - at) / 90) ** 2), 0);
          value += near * Math.sin(2 * Math.PI * h * phase);
        }
      }
      const edge = Math.min(1, i / (0.02 * rate), (each - i) / (0.02 * rate));
      out[index * each + i] = loud * value * (0.3 + 0.7 * edge);
    }
  }
  return out;
}

/** Things said one after another with a pause around each, in a noise of this level. */
export function inRoom(things: readonly Float32Array[], rate: number, noise: number, seed: number, pause = 0.9): Float32Array {
  const { next } = chanceFrom(seed + 100);
  const gap = Math.round(pause * rate);
  const out = new Float32Array(things.reduce((sum, thing) => sum + thing.length + gap, 2 * gap));
  for (let i = 0; i < out.length; i++) out[i] = noise * (next() + next() + next() - 1.5);
  let at = 2 * gap - Math.round(0.2 * rate);
  for (const thing of things) {
    for (let i = 0; i < thing.length; i++) out[at + i] = (out[at + i] ?? 0) + (thing[i] ?? 0);
    at += thing.length + gap;
  }
  return out;
}
