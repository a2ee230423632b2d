// Contract of every language that is heard: its words are far apart and taken wherever they count, whatever is said around them; its
// numbers are read back; what is meant for the logbook is found, and daily talk is left alone.
import { describe, expect, test } from 'vitest';
import { numberWordsIn } from '../../../src/logbook/search/numberWords.ts';
import { WORDS, type Word } from '../../../src/sweep/inputs.ts';
import { writeSteps } from '../../../src/sweep/scale.ts';
import { steps } from '../../../src/units.ts';
import { asName, nameAfterNextIn } from '../../../src/voice/nextLens.ts';
import { KINDS, pairsIn, type Kind, type Pair } from './apart.ts';
import { EVERY_LANGUAGE } from './brought.ts';
import { hearingIn, isTold, phrasesOf, shortly, type Told } from './heard.ts';
import { MOMENTS, wordsAt } from './moments.ts';
import { NEAR_PAIRS } from './nearPairs.ts';
import { waysIn } from './ways.ts';

const PAIRS = new Map(EVERY_LANGUAGE.map(({ name, language }) => [name, pairsIn(language)]));
const leastInEnglish = (kind: Kind): number => PAIRS.get('en')?.[kind][0]?.apart ?? Infinity;
const shown = ({ one, other, apart }: Pair): string => `${one}, ${other} ${apart.toFixed(3)}`;

/** The pairs of words that turn a reading round where one is taken for the other. */
const OPPOSITES: readonly (readonly [Word, Word])[] = [
  ['left', 'right'],
  ['balanced', 'lopsided'],
  ['solid', 'delayed'],
  ['solid', 'flicker'],
  ['solid', 'nothing'],
  ['same', 'shifted'],
  ['accept', 'go on'],
];

const [DIALLING, HOLDING, JUDGED] = [wordsAt('dialling'), wordsAt('holding'), wordsAt('after a verdict')];
const OTHERS = MOMENTS.filter(({ words }) => words !== HOLDING && words !== JUDGED);
const TOLD = WORDS.filter(isTold);
const LARGEST = 50;
const CORRECTIONS = Array.from({ length: 2 * LARGEST + 1 }, (_, at) => at - LARGEST).filter((value) => value !== 0);
/** Share of talk that may be asked about: some of it holds a taught word. */
const ASKED = 0.1;

const plainly = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '');
/** Each of them comes in turn. */
const inTurn = <One>(list: readonly One[], at: number): One => list[at % list.length] as One;
/** One of the moments at which the word counts. */
const momentOf = (word: Word, at: number): readonly Word[] =>
  inTurn(
    MOMENTS.filter(({ words }) => words.includes(word)),
    at,
  ).words;

test('a pair that is known to be near is nearer than any in English', () => {
  const isNear = ({ language, pair }: (typeof NEAR_PAIRS)[number]): boolean =>
    KINDS.some((kind) => PAIRS.get(language)?.[kind].some((one) => pair.includes(one.one) && pair.includes(one.other) && one.apart < leastInEnglish(kind)));
  expect(NEAR_PAIRS.filter((near) => !isNear(near))).toEqual([]);
});

describe.each(EVERY_LANGUAGE)('$name: words', ({ name, language, talk }) => {
  const { heard, strictly, apart } = hearingIn(language);
  const { words, signs, around } = language;
  const say = (word: Word): string => words[word].say;
  const bare = (text: string): string => (language.parted ? language.parted(text).trim().replace(/\s+/g, ' ') : plainly(text.toLowerCase()));

  test.each(KINDS)('of one moment are no nearer than in English, but for pairs that are known: %s', (kind) => {
    const pairs = PAIRS.get(name)?.[kind] ?? [];
    console.log(`${name}, nearest ${kind}: ${pairs.slice(0, 3).map(shown).join('; ')}`);
    const known = NEAR_PAIRS.filter(({ language: of }) => of === name);
    const leastOf = ({ one, other }: Pair): number => known.find(({ pair }) => pair.includes(one) && pair.includes(other))?.least ?? leastInEnglish(kind);
    expect(pairs.filter((pair) => pair.apart < leastOf(pair)).map(shown)).toEqual([]);
  });

  test('that would turn a reading round are further apart, and so are the signs', () => {
    for (const [one, other] of OPPOSITES) expect({ one, other, far: apart(say(one), say(other)) > 0.5 }).toEqual({ one, other, far: true });
    expect(apart(signs.plus[0], signs.minus[0])).toBeGreaterThan(0.5);
  });

  test('and what is understood beside them are taken in each moment where they count, however they are written', () => {
    const wrong: string[] = [];
    let at = 0;
    for (const { name: moment, words: allowed } of MOMENTS) {
      for (const { word, said } of phrasesOf(language, allowed)) {
        const written = [`${said.charAt(0).toUpperCase()}${said.slice(1)}.`, ...(language.parted ? [] : [plainly(said)])];
        for (const text of [said, inTurn(written, at++)]) if (shortly(heard(text, allowed)) !== say(word)) wrong.push(`${moment}: ${text}`);
        if (shortly(strictly(`${said}.`, allowed)) !== say(word)) wrong.push(`${moment}, as it is spelt: ${said}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test('of one moment do not begin one another, so that one may be taken early', () => {
    const clashes = MOMENTS.flatMap(({ words: allowed }) => {
      const phrases = allowed.flatMap((word) => [say(word), ...words[word].also].map((said) => ({ word, said: `${bare(said)} ` })));
      return phrases.flatMap((one) =>
        phrases.filter((other) => other.word !== one.word && other.said.startsWith(one.said)).map(({ said }) => [one.said, said]),
      );
    });
    expect(clashes).toEqual([]);
  });

  test('are taken before the person has stopped where they cannot go on, and later where what denies stands behind', () => {
    const early = TOLD.filter((word) => shortly(strictly(say(word), [word], false)) === say(word));
    expect(early).toEqual(language.deniesBehind ? [] : TOLD);
  });

  test('with courtesies before and after them say the same', () => {
    const wrong: string[] = [];
    const { courtesies } = around;
    const phrases = phrasesOf(language, TOLD);
    for (let at = 0; at < Math.max(phrases.length, courtesies.length); at++) {
      const { word, said } = inTurn(phrases, at);
      const [before, after] = [inTurn(courtesies, at), inTurn(courtesies, at + 3)];
      for (const text of [at % 2 === 0 ? `${before} ${said}` : `${said} ${after}`, `${before}, ${said}, ${after}.`]) {
        if (shortly(heard(text, momentOf(word, at))) !== say(word)) wrong.push(text);
      }
    }
    expect(wrong).toEqual([]);
  });

  test('in a statement are taken or asked about, and never taken for others; those of daily talk may be ignored', () => {
    const { frames, everyday } = around;
    const some = (of: number): readonly Told[] => TOLD.filter((_, at) => at % 5 === of % 5);
    const stated = frames.flatMap((frame, at) => some(at).map((word) => ({ word, said: `${frame} ${say(word)}` })));
    const wrong = stated.flatMap(({ word, said }, at) => {
      const answer = shortly(heard(said, momentOf(word, at)));
      const right = [say(word), `${say(word)}?`, ...(everyday.includes(word) ? [''] : [])];
      return right.includes(answer) ? [] : [`${said}: ${answer}`];
    });
    expect(wrong).toEqual([]);
  });

  test('for a light and its arrow in one breath are one verdict, in either order', () => {
    const input = { told: 'verdict', verdict: { light: 'flicker', arrows: 'left' } };
    for (const text of [`${say('flicker')} ${say('left')}`, `${say('left')} ${say('flicker')}`]) {
      for (const answer of [heard(text, HOLDING), strictly(text, HOLDING)]) expect({ text, ...answer }).toMatchObject({ text, is: 'taken', input });
    }
  });

  test('that people say to each other are not acted on, and rarely asked about', () => {
    expect(talk.length).toBeGreaterThan(60);
    // Where most words count always, and in turn where few do.
    const answers = talk.flatMap((text, at) =>
      [HOLDING, JUDGED, inTurn(OTHERS, at).words, inTurn(OTHERS, at + 3).words].map((allowed) => ({ text, is: heard(text, allowed).is })),
    );
    const asked = answers.filter(({ is }) => is === 'unclear').length / answers.length;
    console.log(`${name}, of ${talk.length} sentences of talk asked about: ${(100 * asked).toFixed(1)} %`);
    expect(answers.filter(({ is }) => is === 'taken').map(({ text }) => text)).toEqual([]);
    expect(asked).toBeLessThan(ASKED);
  });
});

describe.each(EVERY_LANGUAGE)('$name: numbers', ({ language, sayCorrection }) => {
  const { heard, correction } = hearingIn(language);
  const { words, numbers, signs } = language;
  const set = words.set.say;
  const told = (text: string): string => shortly(heard(text, DIALLING, LARGEST));
  const asTaken = (value: number): string => `${set} ${writeSteps(steps(value))}`;

  test('from \u221250 to 50 are read back as themselves, however they are said and written', () => {
    // Each value in every other way, each way with every other value.
    const ways = waysIn(language, sayCorrection);
    expect(CORRECTIONS.filter((value) => correction(sayCorrection(value)) !== value)).toEqual([]);
    expect(
      CORRECTIONS.flatMap((value) =>
        ways
          .filter((_, at) => (at + value) % 2 === 0)
          .map((way) => way(value))
          .filter((text) => told(text) !== asTaken(value)),
      ),
    ).toEqual([]);
  });

  test('in the other ways of saying them are read back as themselves or asked about', () => {
    const wrong = CORRECTIONS.flatMap((value) =>
      numbers
        .also(Math.abs(value))
        .map((also) => `${(value < 0 ? signs.minus : signs.plus)[0]} ${also}`)
        .filter((text) => ![asTaken(value), `${asTaken(value)}?`].includes(told(text))),
    );
    expect(wrong).toEqual([]);
  });

  test('need a sign, but for zero', () => {
    const unsigned = CORRECTIONS.filter((value) => value > 0).flatMap((value) => [`${set} ${numbers.say(value)}`, `${set} ${value}`, numbers.say(value)]);
    expect(unsigned.filter((text) => !['', '?'].includes(told(text)) && !told(text).endsWith('?'))).toEqual([]);
    expect([`${set} ${numbers.say(0)}`, `${set} 0`, `${signs.minus[0]} 0`].filter((text) => told(text) !== asTaken(0))).toEqual([]);
    expect(correction(sayCorrection(0))).toBe(0);
  });
});

describe.each(EVERY_LANGUAGE)('$name: the logbook', ({ language, talk }) => {
  const { questionIn, heard } = hearingIn(language);
  const { numbers, question, naming } = language;
  const { inFigures } = numberWordsIn(numbers);
  const [taught] = question.openings;
  const asksFor = (text: string, length: number): boolean =>
    inFigures(questionIn(text) ?? '')
      .split(' ')
      .includes(String(length));
  const LENGTHS = Array.from({ length: 793 }, (_, at) => at + 8);

  test('is asked for every length from 8 to 800, in words and in figures', () => {
    const unread = LENGTHS.flatMap((length) => [numbers.say(length), ...numbers.also(length)].filter((said) => inFigures(said) !== String(length)));
    expect(unread).toEqual([]);
    // Which number it is makes no difference to a question: of the long ones some are enough.
    const missed = LENGTHS.filter((length) => length <= 100 || length % 9 === 0).flatMap((length) =>
      [`${taught} ${numbers.say(length)}`, `${taught} ${length}`, `${taught} ${length} mm`].filter((text) => !asksFor(text, length)),
    );
    expect(missed).toEqual([]);
  });

  test('is asked by everything that begins or ends a question, and none of it tells anything', () => {
    const openings = [...question.openings, ...question.everyday].map((opening) => `${opening} 85`);
    const texts = [...openings, ...(question.closings ?? []).map((closing) => `85${closing}`)];
    expect(question.openings.filter((opening) => questionIn(opening) !== '')).toEqual([]);
    expect(texts.filter((text) => !asksFor(text, 85))).toEqual([]);
    const asking = MOMENTS.filter(({ asks }) => asks);
    expect(texts.filter((text, at) => heard(text, inTurn(asking, at).words).is === 'taken')).toEqual([]);
    expect(questionIn(`${taught} orrin`, ['Orrin 85'])).toBe('orrin');
  });

  test('is not asked by what people say to each other', () => {
    expect(talk.filter((text) => questionIn(text, ['Orrin 85', 'Corvid 135']) !== null)).toEqual([]);
  });

  test('and the next lens are named behind everything that names one', () => {
    const named = nameAfterNextIn(naming);
    expect(naming.openings.filter((opening) => asName(named(`${opening} Corvid 85`) ?? '') !== 'Corvid 85')).toEqual([]);
    const none = naming.openings.flatMap((opening) => [opening, ...naming.noNames.map((word) => `${opening} ${word}`)]);
    expect(none.filter((text) => named(text) !== null)).toEqual([]);
  });
});
