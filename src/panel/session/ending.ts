// What follows a result: the value is marked as entered, the mark is taken back, the next lens is wanted. The mark is an entry
// of the logbook that rests on the record of the sweep, and it is on disk before anything is said of it.
import { unknownConditions } from '../../logbook/conditions.ts';
import type { Entry } from '../../logbook/entry.ts';
import { toEnter } from '../../sweep/toEnter.ts';
import type { Subject } from '../../sweep/plan.ts';
import type { SweepState } from '../../sweep/state.ts';
import type { Moment, Steps } from '../../units.ts';
import { saidAndShown } from '../../words/catalogue.ts';
import type { InWords } from '../../words/inWords.ts';
import type { SpokenWords } from '../../words/spokenWords.ts';
import type { Carrier } from './carrier.ts';
import type { LibraryStore } from './library.ts';

export interface Ending {
  /** The value that the screen asks to be entered, where it is another than the one found: one that was shifted on purpose. */
  propose(value: Steps | null): void;
  /** Marks it as entered. */
  mark(state: SweepState): Became;
  /** Takes the newest mark of this sweep back; null when there is none. */
  takeBack(state: SweepState): Became | null;
}

/** What became of it in words, in the language that the screens are in when it is read, and when that is on disk. */
export interface Became {
  readonly words: () => string;
  readonly kept: Promise<void>;
}

interface World {
  readonly library: Pick<LibraryStore, 'entries' | 'addEntry' | 'withdrawEntry'>;
  readonly carrier: Pick<Carrier, 'inTurn' | 'tell'>;
  readonly now: () => Moment;
  readonly newId: () => string;
  /** Whose result it is, a stand-in where nobody has said so. */
  readonly named: () => Subject | null;
}

/** The newest entry that rests on this sweep. */
export const markOf = (entries: readonly Entry[], sweep: string): Entry | undefined => entries.findLast(({ record }) => record === sweep);

export function createEnding({ library, carrier, now, newId, named }: World): Ending {
  let proposed: Steps | null = null;

  const told = (make: (say: SpokenWords) => InWords | string, kept = Promise.resolve()): Became => {
    carrier.inTurn(() => kept);
    carrier.tell(saidAndShown('spoken', make));
    return { words: () => saidAndShown('spoken', make).written, kept };
  };

  return {
    propose(value) {
      proposed = value;
    },
    mark({ id, phase, plan, troubles }) {
      const found = phase.name === 'finished' && plan.practice === null ? toEnter(phase.outcome, troubles) : null;
      if (found === null) return told((say) => say.prompt({ say: 'not now', why: 'nothing to enter' }));
      const value = proposed ?? found;
      if (markOf(library.entries.peek(), id)?.value === value) return told((say) => say.mark.madeBefore(value));
      const at = now();
      const subject = named();
      if (!subject) return { words: () => '', kept: Promise.resolve() };
      const kept = library.addEntry({ id: newId(), at, subject, value, record: id, conditions: unknownConditions(at) });
      return told((say) => say.mark.made(value), kept);
    },
    takeBack({ id }) {
      const mark = markOf(library.entries.peek(), id);
      if (!mark) return null;
      return told((say) => say.mark.takenBack(mark.value), library.withdrawEntry(mark.id));
    },
  };
}
