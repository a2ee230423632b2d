// What the panel took in, shown back in a few words: what was told, and what it became.
import type { SweepEvent } from '../sweep/event.ts';
import type { Input } from '../sweep/inputs.ts';
import { writeSteps } from '../sweep/scale.ts';
import type { SweepState } from '../sweep/state.ts';
import { readBack } from './prompts.ts';
import { ARROWS, PRESS } from './vocabulary/en.ts';

/** The words of an input: those that were heard, or those it stands for. */
export function wordsOfInput(input: Input): string {
  if ('heard' in input && input.heard !== null) return input.heard;
  switch (input.told) {
    case 'verdict':
      return readBack(input);
    case 'arrows':
      return ARROWS[input.arrows] ?? 'no arrows';
    case 'set':
      return `set ${writeSteps(input.value)}`;
    case 'press':
      return PRESS[input.press];
    default:
      return input.told;
  }
}

/** What an event that was taken did; `after` is the state it led to. */
export function becameInWords(event: SweepEvent, after: SweepState): string {
  switch (event.did) {
    case 'began':
      return `hold at ${writeSteps(event.value)}`;
    case 'judged':
    case 'amended': {
      const hold = after.holds.at(-1);
      return hold ? `${readBack(hold)} at ${writeSteps(hold.value)}` : 'noted';
    }
    case 'chose':
      return `set ${writeSteps(event.value)}`;
    case 'skipped':
      return 'skipped';
    case 'undid':
      return 'taken back';
    case 'paused':
      return 'paused';
    case 'resumed':
      return 'resumed';
    case 'checked':
      return event.focus === 'unmoved' ? 'focus is the same' : 'focus has shifted';
    case 'went on':
      return 'going on';
    case 'finished':
      return 'finished';
    case 'opened':
    case 'ran':
    case 'unanswered':
    case 'cut off':
      return 'noted';
  }
}
