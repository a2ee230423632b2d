// What a recogniser makes of a word in a noisy room: lost, misheard in spelling or as another word, or right; and the talk
// of others. How often each happens is invented, and worse than a room anyone would work in.
import type { Word } from '../../../../src/sweep/inputs.ts';
import type { Guess } from '../../../../src/voice/matching.ts';
import type { Random } from '../../../../src/practice/random.ts';
import { TAUGHT } from '../../../../src/hearing/languages/en/words.ts';

export type Recogniser = 'own' | 'browser';

/** Spellings that come back for a word, by sound. */
const SOUNDS_LIKE: Readonly<Record<string, readonly string[]>> = {
  solid: ['salad', 'sold', 'solids', 'stolid'],
  delayed: ['the late', 'delay', 'played', 'allayed'],
  flicker: ['flick her', 'liquor', 'flecker', 'quicker'],
  nothing: ['nutting', 'noting', 'no thing', 'muffin'],
  left: ['lift', 'laughed', 'lest', 'theft'],
  right: ['write', 'light', 'ride', 'bright'],
  holding: ['folding', 'hold in', 'holden', 'olden'],
  undo: ['and do', 'undue', 'on do', 'into'],
  accept: ['except', 'a sect', 'expect', 'accent'],
  same: ['sane', 'seem', 'fame', 'sam'],
  resume: ['zoom', 'presume', 'rezoom', 'assume'],
};

const TALK = [
  'mind the tripod',
  'nothing to see here',
  'hold on a second',
  'that is right',
  'is there any coffee left',
  'the light is quite solid today',
  'I will be right back',
  'did you pause the film',
  'shall we go on with the next one',
  'turn that fan down please',
  'nothing',
  'right',
  'left',
  'okay',
  'same',
  'no',
  'well done',
  'set it down',
  'finish your tea',
];

const LOST = 0.12;
const SPELT_WRONG = 0.18;
const ANOTHER = 0.05;
const RUBBISH = 0.03;

/** The guesses of the recogniser for what was said, likeliest first; null when nothing was heard. */
export function through(recogniser: Recogniser, said: string, understood: readonly Word[], random: Random): Guess[] | null {
  const chance = random();
  const others = understood.filter((word) => word !== 'set' && TAUGHT[word] !== said).map((word) => TAUGHT[word]);
  const another = pick(others, random);
  if (chance < LOST) return null;
  if (recogniser === 'own') {
    // One taught word at a time; a pair is heard by its first word.
    const [word = said] = said.split(' ');
    if (chance < LOST + ANOTHER) return [{ text: another, doubtful: random() < 0.7 }];
    return [{ text: TAUGHTS.has(said) ? said : word, doubtful: random() < 0.12 }];
  }
  const guesses = (...all: string[]): Guess[] => all.map((text) => ({ text }));
  if (chance < LOST + SPELT_WRONG) return random() < 0.5 ? guesses(misspelt(said, random), said) : guesses(misspelt(said, random));
  if (chance < LOST + SPELT_WRONG + ANOTHER) return random() < 0.6 ? guesses(another, said) : guesses(another);
  if (chance < LOST + SPELT_WRONG + ANOTHER + RUBBISH) return guesses('the', 'um okay');
  return random() < 0.5 ? guesses(said) : guesses(said, misspelt(said, random));
}

/** What somebody else says meanwhile. The own words reject nearly all of it, and take the rest for a word. */
export function talk(recogniser: Recogniser, understood: readonly Word[], random: Random): Guess[] | null {
  if (recogniser === 'browser') return [{ text: pick(TALK, random) }];
  const words = understood.filter((word) => word !== 'set').map((word) => TAUGHT[word]);
  return random() < 0.1 ? [{ text: pick(words, random), doubtful: random() < 0.7 }] : null;
}

const TAUGHTS = new Set<string>(Object.values(TAUGHT));
const misspelt = (said: string, random: Random): string =>
  said
    .split(' ')
    .map((word) => pick(SOUNDS_LIKE[word] ?? [word], random))
    .join(' ');
const pick = (all: readonly string[], random: Random): string => all[Math.floor(random() * all.length)] ?? '';
