// What an input means to a sweep at this moment: the events it becomes, or why it cannot be taken. Whatever the reducer
// can refuse by itself is left to it, so that an input and a stored event are judged by the same rule.
import type { By, SweepEvent } from './event.ts';
import type { Asked, Input, Meaning, Plain, Word } from './inputs.ts';
import { pressed } from './pressed.ts';
import type { SweepState } from './state.ts';
import { isToBeEntered } from './understood.ts';
import type { Arrows, Light, Verdict } from './verdict.ts';
import type { Moment } from '../units.ts';

/** What the input means in this state; `now` is the moment it was told, `asked` what the person was asked last. */
export function meaning(input: Input, state: SweepState, now: Moment, asked: Asked | null = null): Meaning {
  switch (input.told) {
    case 'verdict':
      return judged(input.verdict, now, input.by, input.heard);
    case 'arrows':
      return arrowsAlone(input.arrows, state, now, input.by, input.heard);
    case 'set':
      return events({ did: 'chose', at: now, value: input.value, by: input.by });
    case 'press':
      return pressed(input, state, now, asked);
    default:
      return plain(input.told, state, now, input.by);
  }
}

function plain(told: Plain, state: SweepState, at: Moment, by: By): Meaning {
  switch (told) {
    case 'hold':
      return events({ did: 'began', at, value: 'next' in state.phase ? state.phase.next.value : state.dialled, by });
    case 'undo':
      return state.phase.name === 'finished' ? { means: 'undo' } : events({ did: 'undid', at, by });
    case 'pause':
      return events({ did: 'paused', at, by });
    case 'resume':
      return events({ did: 'resumed', at, by });
    case 'skip':
      return events({ did: 'skipped', at, by });
    case 'accept':
      return state.phase.name === 'offered' ? events({ did: 'finished', at, by }) : { means: 'not now', why: 'not offered' };
    case 'go on':
      return events({ did: 'went on', at, by });
    case 'unmoved':
    case 'moved':
      return events({ did: 'checked', at, focus: told, by });
    case 'finish':
      return events({ did: 'finished', at, by });
    case 'repeat':
    case 'help':
    case 'far view':
      return { means: told };
    case 'entered':
      if (isToBeEntered(state)) return { means: 'entered' };
      return { means: 'not now', why: state.phase.name === 'finished' ? 'nothing to enter' : 'not offered' };
    case 'next':
      return state.phase.name === 'finished' ? { means: 'next lens' } : { means: 'nothing' };
    case 'back':
      return { means: 'nothing' };
  }
}

/**
 * Arrows told without a light. During a hold one arrow, or both unevenly, says that it failed; both evenly says that it
 * holds so far. After the end tone the light held. After a verdict they complete it.
 */
function arrowsAlone(arrows: Arrows, { plan, phase }: SweepState, at: Moment, by: By, heard: string | null): Meaning {
  if (plan.arrows === 'absent') return { means: 'not now', why: 'no arrows' };
  if (phase.name === 'judging') return judged({ light: 'steady', arrows }, at, by, heard);
  if (phase.name !== 'holding') return events({ did: 'amended', at, arrows, by, heard });
  const light = arrows === 'balanced' || arrows === 'none' ? 'steady' : 'untold';
  return judged({ light, arrows }, at, by, heard);
}

const events = (...all: readonly SweepEvent[]): Meaning => ({ means: 'events', events: all });

const judged = (verdict: Verdict, at: Moment, by: By, heard: string | null): Meaning => events({ did: 'judged', at, verdict, by, heard });

const LIGHT_OF = { solid: 'steady', delayed: 'late', flicker: 'flicker', nothing: 'dark' } as const satisfies Partial<Record<Word, Light>>;
const ARROWS_OF = { left: 'left', right: 'right', balanced: 'balanced', lopsided: 'lopsided' } as const satisfies Partial<Record<Word, Arrows>>;
const PLAIN_OF = { holding: 'hold', same: 'unmoved', shifted: 'moved' } as const satisfies Partial<Record<Word, Plain>>;

export type LightWord = keyof typeof LIGHT_OF;
export type ArrowWord = keyof typeof ARROWS_OF;

/** The input that a taught word stands for, said, keyed or clicked; `set` needs a value and is none by itself. */
export function inputOf(word: Exclude<Word, 'set'>, by: By, heard: string | null = null): Input {
  if (word in LIGHT_OF) return lightWith(word as LightWord, null, by, heard);
  if (word in ARROWS_OF) return { told: 'arrows', arrows: ARROWS_OF[word as ArrowWord], by, heard };
  if (word in PLAIN_OF) return { told: PLAIN_OF[word as keyof typeof PLAIN_OF], by, heard };
  return { told: word as Plain, by, heard };
}

/** A light, and the arrows seen with it. */
export const lightWith = (light: LightWord, arrows: ArrowWord | null, by: By, heard: string | null = null): Input => ({
  told: 'verdict',
  verdict: { light: LIGHT_OF[light], arrows: arrows ? ARROWS_OF[arrows] : 'none' },
  by,
  heard,
});
