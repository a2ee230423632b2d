// From what the recogniser believes it heard to what the person told, by sound: the nearest of the words that count now
// is taken when it is near, and nearer than the next by a margin; between near and far the person is asked again; the
// rest is other talk. The same question and answer as matching.ts, which needs every word spelt as taught.
import type { HeardLanguage } from '../../hearing/languages/heardLanguage.ts';
import { inputOf } from '../../sweep/meaning.ts';
import type { Input, Word } from '../../sweep/inputs.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { strictMatcherFor, type Guess, type Match, type Taken } from '../matching.ts';
import { correctionsIn } from '../corrections.ts';
import { commandsIn, type Nearest } from './commands.ts';
import { lookUpIn } from './lookUp.ts';
import { pronouncer } from './pronouncer.ts';
import { bareWordsIn, spokenWordsIn } from './spokenText.ts';
import { courtesyIn } from './courtesy.ts';
import { pairsIn, remembering, twiceIn, type Interpretation } from './twoParts.ts';
import { valuesIn, type Values } from './values.ts';

/** Nearer than this is taken, nearer than `ASKED` is asked about. */
const TAKEN = 0.17;
/** An arrow taken wrongly sends the person the wrong way, and "light" is nearly "right": it must be nearer. */
const ARROW_TAKEN = 0.1;
const ASKED = 0.32;
const SAME = 0.005;
const MARGIN = 0.07;
/** Where a mistake would flip a reading. */
const FLIP_MARGIN = 0.12;
/** Each guess further down the recogniser's list, and each further guess that agrees. */
const RANK = 0.05;
const AGREES = 0.02;
const GUESSES = 8;
const FLIPS: readonly (readonly [Word, Word])[] = [
  ['left', 'right'],
  ['balanced', 'lopsided'],
];

export interface Matcher {
  match(candidates: readonly Guess[], allowed: readonly Word[], final: boolean, largest?: number): Match;
  /** What the logbook is asked, in words; '' when only the opening was heard; null when nobody asks. `names` may be asked for. */
  questionIn(text: string, names?: readonly string[]): string | null;
}

export function matcherFor(language: HeardLanguage): Matcher {
  const pronounce = pronouncer(language.pronunciation);
  const spokenWords = spokenWordsIn(language);
  const matchStrictly = strictMatcherFor(language);
  const around = courtesyIn(language, pronounce);
  const nearest = commandsIn(language, pronounce, around);
  const values = valuesIn(language, pronounce, around);
  const questionIn = lookUpIn(language, pronounce, around);
  const { correctionIn, wordsOf } = correctionsIn(language);
  const set = bareWordsIn(language)(language.words.set.say).join(' ');
  const [plus = ''] = wordsOf(language.signs.plus[0]);
  /** "Set seven": meant for the panel, but either way could be meant. */
  const lacksSign = ([first, ...rest]: readonly string[]): boolean => first === set && correctionIn([plus, ...rest]) !== null;
  const match: Matcher['match'] = (candidates, allowed, final, largest = 20) => {
    // Before the person has stopped only what is spelt as taught, and cannot go on, is sure enough.
    if (!final) return matchStrictly(candidates, allowed, false);
    const said = candidates.slice(0, GUESSES).map(({ text }) => spokenWords(text));
    const found = decided(together(said.map((words) => readingsOf(words, allowed, largest, nearest, values, language.words))));
    if (found.is === 'ignored' && allowed.includes('set') && said.map(around.trimmed).some(lacksSign)) {
      return { is: 'unclear', best: null };
    }
    return found.is === 'taken' && candidates[0]?.doubtful ? { is: 'unclear', best: found } : found;
  };
  return { match, questionIn: (text, names = []) => questionIn(spokenWords(text), names.flatMap(spokenWords)) };
}

function readingsOf(
  words: readonly string[],
  allowed: readonly Word[],
  largest: number,
  nearest: Nearest,
  values: Values,
  taught: HeardLanguage['words'],
): Interpretation[] {
  if (words.length === 0) return [];
  const heard = words.join(' ');
  const near = remembering(nearest, allowed);
  const commands = near(words).map(({ word, apart }): Interpretation => ({
    words: taught[word].say,
    input: inputOf(word, 'voice', heard),
    apart,
    doubtful: false,
  }));
  const isTold = (commands[0]?.apart ?? Infinity) < TAKEN;
  const pairs = [...pairsIn(words, allowed, near, taught), ...(isTold ? [] : twiceIn(words, near, taught))];
  if (!allowed.includes('set')) return [...commands, ...pairs];
  const settings = values(words, largest).map(({ value, apart, doubtful }): Interpretation => ({
    words: `${taught.set.say} ${writeSteps(value)}`,
    input: { told: 'set', value, by: 'voice', heard },
    apart,
    doubtful,
  }));
  return [...commands, ...pairs, ...settings];
}

/** The best of every reading over all guesses, nearest first. */
function together(guesses: readonly (readonly Interpretation[])[]): Interpretation[] {
  const best = new Map<string, Interpretation & { agreeing: number }>();
  for (const [rank, readings] of guesses.entries()) {
    for (const reading of readings) {
      const apart = reading.apart + rank * RANK;
      const before = best.get(reading.words);
      const agreeing = (before?.agreeing ?? 0) + (reading.apart < ASKED ? 1 : 0);
      if (!before || apart < before.apart) best.set(reading.words, { ...reading, apart, agreeing });
      else best.set(reading.words, { ...before, agreeing });
    }
  }
  return [...best.values()]
    .map(({ agreeing, ...reading }) => ({
      ...reading,
      apart: reading.apart - AGREES * Math.min(3, Math.max(0, agreeing - 1)),
    }))
    .sort((a, b) => a.apart - b.apart);
}

function decided([first, second]: readonly Interpretation[]): Match {
  if (!first || first.apart > ASKED) return { is: 'ignored' };
  const taken: Taken = { is: 'taken', input: first.input, words: first.words };
  const margin = second ? second.apart - first.apart : Infinity;
  const wanted = second && flips(first.input, second.input) ? FLIP_MARGIN : MARGIN;
  const clear = margin >= wanted || (first.apart <= SAME && margin > RANK + SAME);
  if (first.apart > ('arrows' === first.input.told ? ARROW_TAKEN : TAKEN) || first.doubtful || !clear) return { is: 'unclear', best: taken };
  return taken;
}

/** Mistaking one for the other would turn the reading round, or change a value. */
function flips(one: Input, other: Input): boolean {
  if (one.told === 'set' && other.told === 'set') return true;
  if (one.told === 'arrows' && other.told === 'arrows') {
    return FLIPS.some((pair) => pair.every((word) => word === one.arrows || word === other.arrows));
  }
  return one.told === 'verdict' && other.told === 'verdict' && one.verdict.arrows !== other.verdict.arrows;
}
