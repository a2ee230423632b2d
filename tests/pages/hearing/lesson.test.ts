// Contract of a lesson: five good takes end it, and one odd take does not, even where it came first.
import { expect, test } from 'vitest';
import { Lesson, TAKES_A_WORD } from '../../../src/pages/hearing/lesson.ts';
import { inRoom, say, WORDS } from '../../voice/ownWords/spoken.ts';

const RATE = 16_000;

/** How many takes of “undo” a lesson wants, with these said before; null where it never ends. */
function takesWanted(...odd: readonly string[]): number | null {
  const lesson = new Lesson('undo', RATE, []);
  const hear = (word: string, seed: number) => lesson.push(inRoom([say(WORDS[word] ?? [], RATE, seed)], RATE, 0.0005, seed));
  for (const [at, word] of odd.entries()) hear(word, 40 + at);
  for (let count = 1; count <= 20; count += 1) {
    hear('undo', count);
    if (lesson.taken.length >= TAKES_A_WORD) return count;
  }
  return null;
}

test('five takes that are alike end it', () => {
  expect(takesWanted()).toBe(TAKES_A_WORD);
});

test.each(['solid', 'left', 'repeat'])('a first take that was no such word, but like “%s”, is given up once two others agree', (odd) => {
  expect(takesWanted(odd)).toBe(TAKES_A_WORD);
});
