// A long recording as the laptop's microphone would make it: things said in a room one after another, over its noise.
import type { Chance } from './chance.ts';
import { scaled, speechEnd, speechLevel } from './loudness.ts';
import { pink } from './noises.ts';
import { heardIn, type Room } from './room.ts';

/** One thing to be heard. */
export interface Said {
  readonly samples: Float32Array;
  readonly label: string;
  readonly room: Room;
  /** Seconds of quiet after it. */
  readonly pause: number;
  /** Decibels over the level of the others. */
  readonly louder?: number;
}

interface Heard {
  readonly label: string;
  /** Seconds from the start of the recording. */
  readonly begins: number;
  readonly ends: number;
}

export interface Recording {
  readonly samples: Float32Array;
  readonly said: readonly Heard[];
}

/** Seconds after a word within which a decision belongs to it: the next cannot have been said yet. */
const BELONGS = 0.85;

/** The word that a decision belongs to, if any. */
export const wordAt = ({ said }: Recording, event: { readonly began: number; readonly at: number }): Heard | undefined =>
  said.find(({ begins, ends }) => event.began < ends && event.at > begins && event.at < ends + BELONGS);

const SPEECH = 0.03;
const LEAD = 1.5;

/** Everything is brought to one level in the room, with the noise `decibels` under it. */
export function recording(all: readonly Said[], rate: number, decibels: number, chance: Chance): Recording {
  const pieces = all.map(({ samples, room, label, pause, louder = 0 }) => {
    const wet = heardIn(room, samples);
    const end = speechEnd(samples, rate) + room.delay;
    return {
      wet: scaled(wet, (SPEECH * 10 ** (louder / 20)) / speechLevel(wet, rate)),
      label,
      delay: room.delay,
      end,
      pause: Math.round(pause * rate),
    };
  });
  const length = Math.round(LEAD * rate) + pieces.reduce((sum, { end, pause }) => sum + end + pause, 0) + rate;
  const noise = pink(length, chance.whole(1e9) + 1);
  // The filter needs a moment; its level is that of the whole stretch.
  let squares = 0;
  for (const value of noise) squares += value * value;
  const gain = (SPEECH * 10 ** (-decibels / 20)) / Math.sqrt(squares / length);
  const samples = scaled(noise, gain);
  let at = Math.round(LEAD * rate);
  const said: Heard[] = [];
  for (const { wet, label, delay, end, pause } of pieces) {
    for (let i = 0; i < wet.length && at + i < length; i++) samples[at + i] = samples[at + i]! + wet[i]!;
    said.push({ label, begins: (at + delay) / rate, ends: (at + end) / rate });
    at += end + pause;
  }
  return { samples, said };
}
