// Rules of the voice that are a condition each: what is cut short, what is asked back, which words count, and which name follows.
import { expect, test } from 'vitest';
import { ENGLISH_WRITTEN } from '../../src/hearing/languages/en/vocabulary.ts';
import type { Hold } from '../../src/sweep/hold.ts';
import type { Prompt } from '../../src/sweep/effect.ts';
import type { Suggestion } from '../../src/sweep/next/suggestion.ts';
import type { Trouble } from '../../src/sweep/trouble/trouble.ts';
import { steps } from '../../src/units.ts';
import { decide, type Question } from '../../src/voice/askBack.ts';
import { isBrief } from '../../src/voice/brief.ts';
import type { Taken } from '../../src/voice/matching.ts';
import { asName, nameAfterNextIn } from '../../src/voice/nextLens.ts';
import { wordGroupsIn } from '../../src/voice/wordGroups.ts';
import { spokenWordsFor } from '../../src/voice/wordsNow.ts';

const next = {} as Suggestion;
const heldBy = (by: 'voice' | 'key'): Hold => ({ by }) as Hold;
const trouble = {} as Trouble;

test('a question for the verdict and a next value are cut short, but not what was told by voice or comes with a trouble', () => {
  const prompts: Prompt[] = [
    { say: 'did it hold', value: steps(1) },
    { say: 'next', noted: heldBy('key'), next },
    { say: 'next', noted: null, next },
    { say: 'next', noted: heldBy('voice'), next },
    { say: 'next', noted: heldBy('key'), next, trouble },
    { say: 'paused' },
    { say: 'opening', next },
  ];
  expect(prompts.map(isBrief)).toEqual([true, true, true, false, false, false, false]);
});

const undo: Taken = { is: 'taken', input: { told: 'undo', by: 'voice', heard: 'undo' }, words: 'undo' };
const left: Taken = { is: 'taken', input: { told: 'arrows', arrows: 'left', by: 'voice', heard: 'left' }, words: 'left' };
const open: Question = { asked: left, events: 3 };

test('"undo" drops a question that stands, and else is taken; what is ignored or like nothing leaves it', () => {
  expect(decide(open, undo, 3)).toEqual({ do: 'drop' });
  expect(decide(open, undo, 4)).toEqual({ do: 'take', input: undo.input });
  expect(decide(null, undo, 3)).toEqual({ do: 'take', input: undo.input });
  expect(decide(open, left, 3)).toEqual({ do: 'take', input: left.input });
  expect(decide(open, { is: 'ignored' }, 3)).toEqual({ do: 'nothing' });
  expect(decide(open, { is: 'unclear', best: null }, 3)).toEqual({ do: 'say again' });
  expect(decide(open, { is: 'unclear', best: undo }, 3)).toEqual({ do: 'ask', question: { asked: undo, events: 3 } });
});

test('the words of values count where one may be set or asked for, those of questions where the logbook may be asked', () => {
  const many = (words: readonly ('set' | 'undo')[], names: readonly string[] | null): readonly string[] => spokenWordsFor(ENGLISH_WRITTEN, words, names);
  expect([many(['undo'], null), many(['set'], null), many(['undo'], []), many(['undo', 'set'], ['orrin'])].map((words) => words.join(' '))).toMatchSnapshot();
});

test('the groups of words', () => {
  expect(wordGroupsIn(ENGLISH_WRITTEN).map(({ is, words }) => `${is}: ${words.join(', ')}`)).toMatchSnapshot();
});

test('a name follows its opening, without the marks around it', () => {
  const name = nameAfterNextIn(ENGLISH_WRITTEN.naming);
  expect(['next lens Orrin', 'Next, Orrin!', 'next lens', 'next LENS', 'next lens one', 'Orrin', 'next .', 'nextorrin', ' next  lens  \u2026orrin 85. '].map(name)).toEqual(['Orrin', 'Orrin', null, null, null, null, null, null, 'orrin 85']); // prettier-ignore
  expect(['orrin eighty', '85 orrin', '\u00E9clat a'].map(asName)).toEqual(['Orrin Eighty', '85 Orrin', '\u00C9clat A']);
});
