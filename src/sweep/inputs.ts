// Everything a person can tell a sweep, in plain words, whichever way it came: a spoken word, a key, the one switch, the
// pointer. What it means is decided in meaning.ts; here is only its shape.
import type { By } from './event.ts';
import type { Phase } from './state.ts';
import type { Arrows, Verdict } from './verdict.ts';
import type { Moment, Steps } from '../units.ts';

/** How something was told, and the words as they were heard where it came by voice. */
interface How {
  readonly by: By;
  readonly heard: string | null;
}

/** Whatever needs no more than its name. */
export type Plain =
  | 'hold'
  | 'undo'
  | 'repeat'
  | 'help'
  | 'pause'
  | 'resume'
  | 'skip'
  | 'accept'
  | 'go on'
  | 'unmoved'
  | 'moved'
  | 'finish';

/** What the one switch can do: `double` is a second press within 0.4 s, `long` is held for 0.6 s. */
export type Press = 'short' | 'double' | 'long';

export type Input =
  | ({ readonly told: 'verdict'; readonly verdict: Verdict } & How)
  | ({ readonly told: 'arrows'; readonly arrows: Arrows } & How)
  | ({ readonly told: Plain } & How)
  | ({ readonly told: 'set'; readonly value: Steps } & How)
  /** `during`, `downAt`: the phase and the moment when the switch went down. */
  | { readonly told: 'press'; readonly press: Press; readonly during: Phase['name']; readonly downAt: Moment };

/** The taught words. Each stands for one thing a person can tell, also where it comes by key or by button. */
export const WORDS = [
  'solid',
  'delayed',
  'flicker',
  'nothing',
  'left',
  'right',
  'balanced',
  'lopsided',
  'holding',
  'undo',
  'repeat',
  'pause',
  'resume',
  'skip',
  'accept',
  'go on',
  'set',
  'same',
  'shifted',
  'finish',
  'help',
] as const;
export type Word = (typeof WORDS)[number];
