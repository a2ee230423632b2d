// The situations own words are tried in: a speaker teaches the digits in one room, and is then heard, talks, is talked
// to and handles the camera in others. Speakers are whoever the data folder holds.
import { chanceFrom, shuffled, type Chance } from './chance.ts';
import { level, scaled } from './loudness.ts';
import { beeps, cough, drive, key, shutter } from './noises.ts';
import { rooms, type Echo, type Room } from './room.ts';
import type { SpokenDigit } from './spokenDigits.ts';
import { recording, type Recording, type Said } from './stream.ts';
import { takesFrom } from './teaching.ts';
import type { Take } from '../../../src/voice/ownWords/take.ts';

/** Of a sound that is none of the words. */
const NO_WORD = '';
const TAKES = 5;
const HEARD = 10;
/** Taught where other talk is tried, so that the other digits can be that talk. */
const TAUGHT_AMID_TALK = 6;
const TEACHING_DECIBELS = 30;
const PHRASES = 60;
const HANDLINGS = 150;
/** Rooms for words and talk, and those that echo: a bare workshop, a hall. */
const USUAL: Echo = [0.25, 0.5];
const ECHOING: Echo = [0.6, 0.9];
const IN_ECHO = 5;
/** Words of each digit that follow a sound, and decibels that the sound may be over or under the word. */
const AFTER_EACH = 2;
const LOUDER = 6;

/** What a person at a camera hears beside words. */
export const SOUNDS = { shutter, key, cough, beep: beeps, drive } as const;
export type SoundName = keyof typeof SOUNDS;

/** In rooms as they are lived in, or in those that ring on. */
type Where = 'usual' | 'echoing';

export interface Trial {
  readonly speaker: string;
  readonly rate: number;
  /** Five takes of all ten digits; of the six that are taught where other talk is tried. */
  readonly takes: readonly Take[];
  readonly fewer: readonly Take[];
  words(decibels: number): Recording;
  /** As many words as `words`, and none of them. */
  firstSweep(decibels: number): Recording;
  /** Null where the data has no words for it. */
  ownTalk(decibels: number, where?: Where): Recording | null;
  othersTalk(decibels: number): Recording | null;
  handling(decibels: number): Recording;
  /** The words of `words`, where the room rings on. */
  echoing(decibels: number): Recording;
  /** Words that begin so many seconds after a sound has ended. */
  after(sound: SoundName, seconds: number, decibels: number): Recording;
  /** Digits in another voice, as the panel's own prompts, each a phrase; null where nobody else speaks. */
  prompts(decibels: number): Recording | null;
}

export function trials(speakers: ReadonlyMap<string, readonly SpokenDigit[]>, times: number): Trial[] {
  const all = [...speakers.values()].flat();
  const rate = all[0]!.sound.rate;
  const places = rooms(10, 77, rate, USUAL);
  const halls = rooms(6, 177, rate, ECHOING);
  return [...speakers.keys()].flatMap((speaker) => Array.from({ length: times }, (_, time) => trial(speaker, all, { places, halls }, rate, time)));
}

interface Places {
  readonly places: readonly Room[];
  readonly halls: readonly Room[];
}

function trial(speaker: string, all: readonly SpokenDigit[], { places, halls }: Places, rate: number, time: number): Trial {
  const chance = chanceFrom(100 + time);
  const digits = [...'0123456789'];
  const own = new Map(
    digits.map((digit) => [
      digit,
      shuffled(
        all.filter((one) => one.speaker === speaker && one.digit === digit),
        chance,
      ),
    ]),
  );
  const part = (from: number, to?: number) => [...own.values()].flatMap((list) => list.slice(from, to));
  const somewhere = (by: Chance) => places[by.whole(places.length)]!;
  const said = (list: readonly SpokenDigit[], by: Chance, room?: Room): Said[] =>
    list.map(({ sound, digit }) => ({
      samples: sound.samples,
      label: digit,
      room: room ?? somewhere(by),
      pause: by.between(0.9, 1.5),
    }));

  const teaching = recording(said(part(0, TAKES), chance, places[time % places.length]!), rate, TEACHING_DECIBELS, chance);
  const takes = takesFrom(teaching, rate);
  const heard = (list: readonly SpokenDigit[], decibels: number, seed: number): Recording => {
    const by = chanceFrom(seed + time + decibels);
    return recording(said(shuffled(list, by), by), rate, decibels, by);
  };
  const taught = shuffled(digits, chance).slice(0, TAUGHT_AMID_TALK);
  const untaught = (one: SpokenDigit) => !taught.includes(one.digit);
  const talk = (list: readonly SpokenDigit[], decibels: number, seed: number, where: Where): Recording | null => {
    if (list.length === 0) return null;
    const by = chanceFrom(seed + time);
    const phrases = Array.from({ length: PHRASES }, (): Said => ({
      samples: runTogether(
        Array.from({ length: 1 + by.whole(7) }, () => list[by.whole(list.length)]!),
        rate,
        by,
      ),
      label: NO_WORD,
      room: where === 'usual' ? somewhere(by) : halls[by.whole(halls.length)]!,
      pause: by.between(0.6, 1.8),
    }));
    return recording(phrases, rate, decibels, by);
  };
  return {
    speaker,
    rate,
    takes,
    fewer: takes.filter(({ word }) => taught.includes(word)),
    words: (decibels) => heard(part(TAKES, TAKES + HEARD), decibels, 7),
    firstSweep: (decibels) => heard(part(TAKES + HEARD, TAKES + 2 * HEARD), decibels, 900),
    ownTalk: (decibels, where = 'usual') => talk(part(TAKES + HEARD).filter(untaught), decibels, 31, where),
    othersTalk: (decibels) =>
      talk(
        all.filter((one) => one.speaker !== speaker && untaught(one)),
        decibels,
        41,
        'usual',
      ),
    handling: (decibels) => {
      const by = chanceFrom(51 + time);
      const sounds = Array.from({ length: HANDLINGS }, (_, index): Said => {
        const make = [shutter, beeps, drive][index % 3]!;
        return {
          samples: make(rate, index + HANDLINGS * time),
          label: NO_WORD,
          room: somewhere(by),
          pause: by.between(0.6, 1.8),
        };
      });
      return recording(sounds, rate, decibels, by);
    },
    echoing: (decibels) => {
      const by = chanceFrom(507 + time);
      const list = shuffled(part(TAKES, TAKES + IN_ECHO), by);
      return recording(
        list.flatMap((one) => said([one], by, halls[by.whole(halls.length)]!)),
        rate,
        decibels,
        by,
      );
    },
    after: (name, seconds, decibels) => {
      const by = chanceFrom(607 + time);
      const pairs = shuffled(part(TAKES, TAKES + AFTER_EACH), by).flatMap((one, index): Said[] => {
        const room = somewhere(by);
        const samples = SOUNDS[name](rate, index + 100 * time);
        return [{ samples, label: NO_WORD, room, pause: seconds, louder: by.between(-LOUDER, LOUDER) }, ...said([one], by, room)];
      });
      const all = recording(pairs, rate, decibels, by);
      return { ...all, said: all.said.filter(({ label }) => label !== NO_WORD) };
    },
    prompts: (decibels) => {
      const by = chanceFrom(707 + time);
      const voice = [...new Set(all.map((one) => one.speaker))].find((other) => other !== speaker);
      const list = all.filter((one) => one.speaker === voice);
      if (list.length === 0) return null;
      const phrases = Array.from({ length: PHRASES }, (): Said => {
        const digits = Array.from({ length: 2 + by.whole(2) }, () => list[by.whole(list.length)]!);
        return { samples: runTogether(digits, rate, by), label: NO_WORD, room: somewhere(by), pause: by.between(1.6, 2.4) };
      });
      return recording(phrases, rate, decibels, by);
    },
  };
}

/** Words as they follow each other in talk: equally loud, up to 0.1 s apart. */
function runTogether(words: readonly SpokenDigit[], rate: number, chance: Chance): Float32Array {
  const pieces = words.map(({ sound }) => scaled(sound.samples, 0.1 / level(sound.samples)));
  const gaps = pieces.map(() => Math.round(chance.between(0, 0.1) * rate));
  const out = new Float32Array(pieces.reduce((sum, piece, index) => sum + piece.length + gaps[index]!, 0));
  let at = 0;
  for (const [index, piece] of pieces.entries()) {
    out.set(piece, at);
    at += piece.length + gaps[index]!;
  }
  return out;
}
