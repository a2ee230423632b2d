// Contract of the groups in which words are taught.
import { describe, expect, test } from 'vitest';
import { WORDS } from '../../src/sweep/inputs.ts';
import { firstWordsIn, wordGroupsIn } from '../../src/voice/wordGroups.ts';
import { ENGLISH_WRITTEN } from '../../src/hearing/languages/en/vocabulary.ts';

const FIRST_WORDS = firstWordsIn(ENGLISH_WRITTEN);
const WORD_GROUPS = wordGroupsIn(ENGLISH_WRITTEN);

describe('the groups in which words are taught', () => {
  test('hold every word once, the seven of a sweep first', () => {
    const all = WORD_GROUPS.flatMap(({ words }) => words);
    expect(new Set(all).size).toBe(all.length);
    expect(all.length).toBeGreaterThanOrEqual(WORDS.length);
    expect(WORD_GROUPS[0]?.words).toEqual(FIRST_WORDS);
    expect(FIRST_WORDS).toHaveLength(7);
  });
});
