// Everything a person can tell a sweep, in plain words, whichever way it came: a spoken word, a key, the one switch, the
// pointer; and what it can come to. meaning.ts decides which.
import type { NotNow } from './effect.ts';
import type { By, SweepEvent } from './event.ts';
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
  | 'finish'
  /** The value found stands in the camera now. */
  | 'entered'
  /** In the set-up walk the next step; at a result, the next lens. */
  | 'next'
  /** Of the set-up walk alone. */
  | 'back'
  /** The panel shows the sweep to be read from afar, or no longer does. */
  | 'far view';

/** What the one switch can do: `double` is a second press within 0.4 s, `long` is held for 0.6 s. */
export type Press = 'short' | 'double' | 'long';

export type Input =
  | ({ readonly told: 'verdict'; readonly verdict: Verdict } & How)
  | ({ readonly told: 'arrows'; readonly arrows: Arrows } & How)
  | ({ readonly told: Plain } & How)
  | ({ readonly told: 'set'; readonly value: Steps } & How)
  /** `during`, `downAt`: the phase and the moment when the switch went down. */
  | { readonly told: 'press'; readonly press: Press; readonly during: Phase['name']; readonly downAt: Moment };

/** What an input comes to. */
export type Meaning =
  | { readonly means: 'events'; readonly events: readonly SweepEvent[] }
  | { readonly means: 'not now'; readonly why: NotNow }
  /** Say the last prompt again; say what is understood now; the far view on or off. The sweep itself does not change. */
  | { readonly means: 'repeat' | 'help' | 'far view' }
  /** A press of the switch that may not be meant as it came: the person is asked, and the sweep does not change. */
  | { readonly means: 'asked'; readonly about: Asked }
  /** What follows a result: the value is marked as entered, the mark or else the finish is taken back, or the next lens is wanted. */
  | { readonly means: 'entered' | 'undo' | 'next lens' }
  /** A press that has no meaning any more, because the hold it was about is over. */
  | { readonly means: 'nothing' };

/**
 * What the person is asked about, while the hold that began at `hold` is under way. `kept`: the switch stayed down from the
 * beginning of the hold, as if it were the camera's button. A press: it came too soon for the light to have been seen.
 */
export interface Asked {
  readonly hold: Moment;
  readonly about: 'kept' | Press;
}

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
  'entered',
  'next',
  'back',
  'far view',
] as const;
export type Word = (typeof WORDS)[number];
