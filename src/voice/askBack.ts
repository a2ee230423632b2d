// What was heard but not clearly enough is read back, and only counts when the person says it again. A question stands for
// one state of the sweep: once anything has happened the same word could mean something else.
import type { Input } from '../sweep/inputs.ts';
import type { Match, Taken } from './matching.ts';

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
