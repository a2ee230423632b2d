// Contract of reading back: nothing doubtful counts before it is said again, and a value cannot be taken for another.
import { expect, test } from 'vitest';
import { steps } from '../../src/units.ts';
import { decide } from '../../src/voice/askBack.ts';
import type { Taken } from '../../src/voice/matching.ts';
import { words } from '../../src/words/catalogue.ts';

const left: Taken = { is: 'taken', input: { told: 'arrows', arrows: 'left', by: 'voice', heard: 'left' }, words: 'left' };
const right: Taken = { is: 'taken', input: { told: 'arrows', arrows: 'right', by: 'voice', heard: 'right' }, words: 'right' };
const asked = { asked: left, events: 3 };

test('what is doubtful is asked, and taken when the same is heard once more', () => {
  expect(decide(null, { is: 'unclear', best: left }, 3)).toEqual({ do: 'ask', question: asked });
  expect(decide(asked, { is: 'unclear', best: left }, 3)).toEqual({ do: 'take', input: left.input });
});

test('another doubtful word is another question, and a clear one is taken', () => {
  expect(decide(asked, { is: 'unclear', best: right }, 3)).toMatchObject({ do: 'ask', question: { asked: right } });
  expect(decide(asked, right, 3)).toEqual({ do: 'take', input: right.input });
});

test('a question is over once anything has happened', () => {
  expect(decide(asked, { is: 'unclear', best: left }, 4)).toMatchObject({ do: 'ask', question: { events: 4 } });
});

test.each([
  [-15, 'Minus fifteen, one five?'],
  [7, 'Plus seven?'],
  [0, 'Zero?'],
])('the value %i is asked with its sign, and digit by digit', (value, spoken) => {
  const taken: Taken = { is: 'taken', input: { told: 'set', value: steps(value), by: 'voice', heard: '' }, words: 'set' };
  expect(words('spoken').askBack.question(taken).spoken).toBe(spoken);
});
