// From written words to sounds: the language's list of words first, then a known word with a common ending, then its
// rules for letters. Only likeness is asked of it, so a wrong vowel in a rare word does little harm.
import type { Pronunciation } from '../../hearing/languages/pronunciation.ts';
import { listedWords } from '../../hearing/languages/wordList.ts';
import { VOWEL_LETTERS, type Phones } from '../../hearing/languages/sounds.ts';

export type Pronounce = (word: string) => Phones;

/** Gives any word its sounds. Words once asked are remembered, apart from the listed ones: how a word sounds hangs on none that was asked before. */
export function pronouncer(language: Pronunciation): Pronounce {
  const listed = new Map<string, Phones>(listedWords(language.words));
  const asked = new Map<string, Phones>();
  const rules = language.letters.map(([written, sounds]): Rule => {
    const [letters = '', next = ''] = written.split('/');
    return { letters, next, sounds };
  });
  const twice = new RegExp(`([${language.doubled}])\\1`, 'g');
  const bySpelling = (word: string): Phones => {
    const plainly = (whole: string): Phones => stressed(byLetters(whole.replace(twice, '$1'), rules), language.weakly.test(whole) ? 'second' : language.stress);
    const fitting = language.endings.filter(([letters]) => word.endsWith(letters));
    for (const [letters, sounds, lost = ''] of fitting) {
      const stem = listed.get(word.slice(0, -letters.length) + lost);
      if (stem !== undefined) return stem + sounds;
    }
    for (const [letters, sounds, lost] of fitting) {
      const stem = word.slice(0, -letters.length);
      if (lost !== undefined && language.shortened.test(stem)) return plainly(stem + lost) + sounds;
    }
    return plainly(word);
  };
  return (word) => {
    let sounds = listed.get(word) ?? asked.get(word);
    if (sounds === undefined) asked.set(word, (sounds = bySpelling(word)));
    return sounds;
  };
}

interface Rule {
  readonly letters: string;
  /** One of these comes next, and is left to the next rule; whatever comes where there are none. */
  readonly next: string;
  readonly sounds: Phones;
}

function byLetters(word: string, rules: readonly Rule[]): Phones {
  let left = `^${word}$`;
  let out = '';
  while (left !== '' && left !== '$') {
    const rule = rules.find(({ letters, next }) => left.startsWith(letters) && (next === '' || next.includes(left.charAt(letters.length))));
    left = rule ? left.slice(rule.letters.length) : left.slice(1);
    if (rule?.letters.endsWith('$')) left = '';
    out += rule?.sounds ?? '';
  }
  return out;
}

const VOWEL = new RegExp(`[${VOWEL_LETTERS}]`, 'g');

function stressed(sounds: Phones, stress: Pronunciation['stress'] | 'second'): Phones {
  const vowels = [...sounds.matchAll(VOWEL)];
  const at = stressedOf(vowels, stress)?.index;
  return at === undefined ? sounds : sounds.slice(0, at) + sounds.charAt(at).toUpperCase() + sounds.slice(at + 1);
}

function stressedOf<Vowel>(vowels: readonly Vowel[], stress: Pronunciation['stress'] | 'second'): Vowel | undefined {
  switch (stress) {
    case 'last':
      return vowels.at(-1);
    case 'last but one':
      return vowels.at(-2) ?? vowels[0];
    case 'second':
      return vowels[1] ?? vowels[0];
    case 'first':
      return vowels[0];
  }
}
