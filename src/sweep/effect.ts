// What the reducer asks of the world, as data: keep this event, sound this tone, say this, wake me then. The panel
// carries the effects out one after another, so that an event is on disk before anything is said about it.
import type { Seconds, Steps } from '../units.ts';
import type { Drift } from './end/drift.ts';
import type { Rival } from './end/story.ts';
import type { Outcome } from './end/outcome.ts';
import type { SweepEvent } from './event.ts';
import type { Hold } from './hold.ts';
import type { Suggestion } from './next/suggestion.ts';
import type { TurnWay } from './transfer/turning.ts';
import type { Trouble } from './trouble/trouble.ts';

/** The tones: the half-press may begin, the time is up, it was noted, it was refused, and the count-in. */
export type Tone = 'begin' | 'end' | 'noted' | 'refused' | 'count';

/** What is said, and shown to those who do not hear it. The catalogue writes the sentences. */
export type Prompt =
  | { readonly say: 'opening'; readonly next: Suggestion }
  /** `trouble`, here and below: one that was just found. */
  | { readonly say: 'next'; readonly noted: Hold | null; readonly next: Suggestion; readonly trouble?: Trouble }
  | { readonly say: 'too early'; readonly left: Seconds }
  | { readonly say: 'did it hold'; readonly value: Steps }
  | { readonly say: 'hold again'; readonly value: Steps; readonly why: 'unanswered' | 'cut off' }
  /** `look`: there is a live view to look at once more. `trouble`: one that stands, new or not. */
  | { readonly say: 'offer'; readonly noted: Hold | null; readonly outcome: Outcome; readonly look: boolean; readonly trouble?: Trouble }
  | { readonly say: 'check focus'; readonly noted: Hold | null; readonly drift: Drift; readonly rival?: Rival; readonly trouble?: Trouble }
  /** To set the focus aside, so that the whole band falls inside the scale. */
  | { readonly say: 'turn the focus'; readonly noted: Hold | null; readonly way: TurnWay; readonly practice: boolean }
  | { readonly say: 'fresh series'; readonly next: Suggestion }
  | { readonly say: 'undone'; readonly next: Suggestion }
  | { readonly say: 'nothing to undo' }
  | { readonly say: 'paused' }
  /** `practice`: there is no camera to enter it in. `trouble`: one that stands. */
  | { readonly say: 'outcome'; readonly outcome: Outcome; readonly practice: boolean; readonly trouble?: Trouble }
  | { readonly say: 'not now'; readonly why: NotNow };

/** Why an input was not taken. */
export type NotNow =
  | 'hold first'
  | 'hold under way'
  | 'answer first'
  | 'off the scale'
  | 'paused'
  | 'not paused'
  | 'finished'
  | 'no arrows'
  | 'check focus first'
  | 'turn first'
  | 'nothing to check'
  | 'not offered'
  | 'nothing to enter';

/** Clocks the sweep may set; each kind runs once at a time, and a new phase clears the others. */
export type Alarm = 'hold time' | 'answer' | 'dial';

export type Effect =
  /** Put the event on disk and wait until it is there. */
  | { readonly do: 'keep'; readonly event: SweepEvent }
  /** `after`: how long from now, zero for at once. */
  | { readonly do: 'sound'; readonly tone: Tone; readonly after: Seconds }
  | { readonly do: 'say'; readonly prompt: Prompt }
  | { readonly do: 'wake'; readonly alarm: Alarm; readonly after: Seconds }
  | { readonly do: 'clear alarms' }
  /** The sweep is over: put it into the logbook. */
  | { readonly do: 'record'; readonly outcome: Outcome };
