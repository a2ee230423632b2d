// One switch: a pedal that sends a key, or the pointer on the panel's button. Short, double and long are all there is.
import type { Hand, Word } from './sweeping.ts';
import { look, type Seat } from './seat.ts';

/** The two halves of a press. */
export interface Switch {
  down: () => Promise<void>;
  up: () => Promise<void>;
}

export const pedal = (seat: Seat, key: string): Switch => ({ down: () => seat.down(key), up: () => seat.up(key) });

/** Past the length of a long press, however busy the computer is. */
const LONG = 800;

export async function short({ down, up }: Switch): Promise<void> {
  await down();
  await up();
}

export async function double(one: Switch): Promise<void> {
  await short(one);
  await short(one);
}

export async function long({ down, up }: Switch): Promise<void> {
  await down();
  await new Promise((go) => setTimeout(go, LONG));
  await up();
}

/** No light has been seen and told sooner than this after the hold began; a press that comes sooner is asked about. */
const SEEN_AFTER = 750;

/** Undo: a long press, which begins a hold, and two presses in it. */
export async function takeBack(one: Switch): Promise<void> {
  await long(one);
  await double(one);
}

const PRESSES: Record<Word, (one: Switch) => Promise<void>> = { solid: short, flicker: short, delayed: double, nothing: long };

/** A person with these switches, who uses them in turn, one a hold. */
export function switches(...all: readonly [Switch, ...Switch[]]): Hand {
  let holds = 0;
  const mine = (): Switch => all[holds % all.length] ?? all[0];
  return {
    beginHold: () => short(mine()),
    async tell(seat, word) {
      // A light that came on late may be told when the time is up; the switch then knows only that it failed.
      const late = word !== 'solid' && (await look(seat)).phase === 'judging';
      if (!late) await new Promise((go) => setTimeout(go, SEEN_AFTER));
      await (late ? long : PRESSES[word])(mine());
      holds += 1;
    },
  };
}
