// What made-up talk asks the logbook, kept: behind openings that are whole and that lack a letter, and before what ends a question.
import { expect, test } from 'vitest';
import { courtesyIn } from '../../../src/voice/phonetic/courtesy.ts';
import { lookUpIn } from '../../../src/voice/phonetic/lookUp.ts';
import { pronouncer } from '../../../src/voice/phonetic/pronouncer.ts';
import { spokenWordsIn } from '../../../src/voice/phonetic/spokenText.ts';
import { talkIn, WHOLE } from '../keptTalk.ts';

const pronounce = pronouncer(WHOLE.pronunciation);
const spoken = spokenWordsIn(WHOLE);
const asked = lookUpIn(WHOLE, pronounce, courtesyIn(WHOLE, pronounce));
const { openings, everyday, closings = [] } = WHOLE.question;
const say = (whole: number): string => WHOLE.numbers.say(whole);
const query = (text: string): string => `${text}: ${asked(spoken(text), ['orrin']) ?? '-'}`;

test('behind an opening', () => {
  const texts = [...openings, ...everyday, 'wusho fu', ''].flatMap((opening, at) => [
    `${opening} ${say(10 + at)}`,
    `${opening} orrin`,
    `${opening} gost`,
    `eh ${opening} eh ${say(at)} eh`,
    opening,
    ...[...opening].flatMap((_, cut) => [
      `${opening.slice(0, cut)}${opening.slice(cut + 1)} ${say(3)}`,
      `${opening.slice(0, cut)}x${opening.slice(cut + 1)} orrin`,
    ]),
    ...['b', 'k', 't'].flatMap((letter) => [`${letter}${opening} ${say(4)}`, `${letter}${opening} orrin`, `${opening}${letter} ${say(5)} orrin`]),
  ]);
  expect(texts.map(query)).toMatchSnapshot();
});

test('before what ends it', () => {
  const texts = closings.flatMap((closing) => [`${say(85)} ${closing}`, `orrin ${closing}`, `gost ${closing}`, closing, `eh ${say(7)} eh ${closing} eh`, `${say(6)} ${closing} gost`]); // prettier-ignore
  expect(texts.map(query)).toMatchSnapshot();
});

test('in other talk', () => {
  expect(talkIn(WHOLE, 100, 53).map(query)).toMatchSnapshot();
});

test('a number is one up to 1999, and every word of it alone', () => {
  const odd = { ...WHOLE, numbers: { ...WHOLE.numbers, say: (whole: number) => `n${whole}` } };
  const own = lookUpIn(odd, pronounce, courtesyIn(odd, pronounce));
  expect(['n0', 'n1', 'n1999', 'n2000', 'nulo'].map((word) => own(['dral', word], []))).toEqual(['n0', 'n1', 'n1999', null, 'nulo']);
});
