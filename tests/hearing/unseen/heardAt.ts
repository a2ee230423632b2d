// What the panel does with one transcript in one moment, as what listens there decides it: the words of the moment first, then a
// question to the logbook, then the name of the next lens.
import type { HeardLanguage } from '../../../src/hearing/languages/heardLanguage.ts';
import { isSameName } from '../../../src/kit/told.ts';
import { USUAL_LIMITS } from '../../../src/logbook/due.ts';
import { finderOf, lookUpSpoken } from '../../../src/logbook/search/finder.ts';
import { numberWordsIn } from '../../../src/logbook/search/numberWords.ts';
import { shelfOf } from '../../../src/logbook/shelf.ts';
import { heeded } from '../../../src/sweep/heeded.ts';
import type { Word } from '../../../src/sweep/inputs.ts';
import { USUAL_SCALE } from '../../../src/sweep/scale.ts';
import { understood } from '../../../src/sweep/understood.ts';
import type { Taken } from '../../../src/voice/matching.ts';
import { asName, nameAfterNextIn } from '../../../src/voice/nextLens.ts';
import { matcherFor } from '../../../src/voice/phonetic/match.ts';
import { libraryWith, T0 } from '../../logbook/libraryWith.ts';
import { after, inPhase, later } from '../../sweep/staged.ts';
import type { Means, Moment, Unseen } from './transcript.ts';

/** `asked as another`: read back as something that was not meant. */
export type Became = 'right' | 'asked back' | 'asked as another' | 'ignored' | 'wrong';

export interface HeardAt {
  became(moment: Moment, text: string, means: Means): Became;
  /** What was done about it, in words; null where nothing was, or where the person is asked back. */
  actedOn(moment: Moment, text: string): string | null;
  isAskedAbout(moment: Moment, text: string): boolean;
}

const LARGEST = 20;
/** Of the set-up walk, which attends in place of a sweep. */
const WALK = ['next', 'back', 'repeat'] as const satisfies readonly Word[];
const UNASKED: readonly Moment[] = ['holding', 'judging', 'set-up'];

function wordsAt(moment: Moment): readonly Word[] {
  if (moment === 'set-up') return WALK;
  const plan = { scale: USUAL_SCALE };
  // A result that gives a value.
  if (moment === 'finished') return heeded(understood(after(inPhase('offered', plan), { did: 'finished', at: later(999), by: 'key' })).words);
  return heeded(understood(inPhase(moment, plan)).words);
}

type Done = { readonly is: 'told'; readonly told: Taken } | { readonly is: 'found' | 'next'; readonly lens: string };
type Answer = Done | { readonly is: 'asked'; readonly best: Taken | null } | { readonly is: 'nothing' };

export function heardAt(language: HeardLanguage, { lenses }: Unseen): HeardAt {
  const { match, questionIn } = matcherFor(language);
  const nameAfterNext = nameAfterNextIn(language.naming);
  const { inFigures } = numberWordsIn(language.numbers);
  const names = lenses.map(([name]) => name);
  const library = libraryWith({
    bodies: [{ id: 'b' }],
    lenses: lenses.map(([name]) => ({ id: name, name })),
    situations: lenses.map(([name, focalLength]) => ({ id: name, body: 'b', lens: name, focalLength })),
  });
  const finder = finderOf(language, library.kit, shelfOf(library, { at: T0, temperature: null }, USUAL_LIMITS));

  function answer(moment: Moment, text: string): Answer {
    const found = match([{ text }], wordsAt(moment), true, LARGEST);
    if (found.is === 'taken') return { is: 'told', told: found };
    if (found.is === 'unclear') return { is: 'asked', best: found.best };
    const query = UNASKED.includes(moment) ? null : questionIn(text, names);
    if (query) return { is: 'found', lens: lookUpSpoken(finder, query)[0]?.subject.lens ?? '' };
    const name = moment === 'finished' ? nameAfterNext(text) : null;
    return name === null ? { is: 'nothing' } : { is: 'next', lens: asName(inFigures(name)) };
  }

  function isMeant({ words, input }: Taken, means: Means): boolean {
    if (typeof means === 'number') return input.told === 'set' && input.value === means;
    if (typeof means === 'string') return words === language.words[means].say;
    return 'length' in means && words === means.map((word) => language.words[word].say).join(' ');
  }

  function isDone(done: Done, means: Means): boolean {
    if (done.is === 'told') return isMeant(done.told, means);
    if (typeof means !== 'object' || 'length' in means) return false;
    return 'sought' in means ? done.is === 'found' && done.lens.startsWith(means.sought) : done.is === 'next' && isSameName(done.lens, means.nextLens);
  }

  return {
    became(moment, text, means) {
      const now = answer(moment, text);
      if (now.is === 'nothing') return 'ignored';
      if (now.is === 'asked') return now.best === null || isMeant(now.best, means) ? 'asked back' : 'asked as another';
      return isDone(now, means) ? 'right' : 'wrong';
    },
    actedOn(moment, text) {
      const now = answer(moment, text);
      if (now.is === 'nothing' || now.is === 'asked') return null;
      return now.is === 'told' ? now.told.words : `${now.is}: ${now.lens}`;
    },
    isAskedAbout: (moment, text) => answer(moment, text).is === 'asked',
  };
}
