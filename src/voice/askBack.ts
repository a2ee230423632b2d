// What was heard but not clearly enough is read back, and only counts when the person says it again. A question stands for
// one state of the sweep: once anything has happened the same word could mean something else.
import type { Input } from '../sweep/inputs.ts';
import type { Match, Taken } from './matching.ts';
import type { InWords } from './outcomes.ts';
import { sayCorrection, sayNumber } from './numbers.ts';

export interface Question {
  readonly asked: Taken;
  /** How many events stood when it was asked. */
  readonly events: number;
}

export type Decision =
  | { readonly do: 'take'; readonly input: Input }
  /** Read it back; it stands until it is said again or something else happens. */
  | { readonly do: 'ask'; readonly question: Question }
  | { readonly do: 'drop' }
  | { readonly do: 'say again' }
  | { readonly do: 'nothing' };

/** `events`: how many stand now. */
export function decide(question: Question | null, heard: Match, events: number): Decision {
  const open = question?.events === events ? question : null;
  switch (heard.is) {
    case 'ignored':
      return { do: 'nothing' };
    case 'taken':
      return open && heard.input.told === 'undo' ? { do: 'drop' } : { do: 'take', input: heard.input };
    case 'unclear': {
      const { best } = heard;
      if (!best) return { do: 'say again' };
      return open?.asked.words === best.words ? { do: 'take', input: best.input } : { do: 'ask', question: { asked: best, events } };
    }
  }
}

/** A question was answered with no. */
export const NOT_TAKEN: InWords = { spoken: 'Not taken.', written: 'That was not taken. Say what it was.' };

/** Something was said that could not be told apart. */
export const SAY_AGAIN: InWords = { spoken: 'Say that again.', written: 'That was not clear. Say it again.' };

/** "Left?"; a value so that no number is taken for another: "Minus fifteen, one five?" */
export function questionInWords({ asked: { input, words } }: Question): InWords {
  const said = input.told === 'set' ? spelled(input.value) : words;
  return {
    spoken: `${said.charAt(0).toUpperCase()}${said.slice(1)}?`,
    written: `Was that “${words}”? Say it again if it was; say undo or another word if not.`,
  };
}

function spelled(value: number): string {
  const digits = [...String(Math.abs(value))];
  const whole = sayCorrection(value);
  return digits.length < 2 ? whole : `${whole}, ${digits.map((digit) => sayNumber(Number(digit))).join(' ')}`;
}
