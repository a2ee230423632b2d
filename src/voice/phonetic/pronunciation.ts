// From written words to sounds: the language's list of words first, then a known word with a common ending, then its
// rules for letters. Only likeness is asked of it, so a wrong vowel in a rare word does little harm.
import type { Phones } from './phones.ts';
import type { Spelling } from './spelling.ts';

/** Gives any word its sounds. Words once asked are remembered. */
export function pronouncer(spelling: Spelling): (word: string) => Phones {
  const known = new Map<string, Phones>();
  for (const line of spelling.words.split('\n')) {
    const [word, sounds] = line.split(' ');
    if (word && sounds) known.set(word, sounds);
  }
  const bySpelling = (word: string): Phones => {
    for (const [letters, sounds] of spelling.endings) {
      const stem = word.endsWith(letters) ? known.get(word.slice(0, -letters.length)) : undefined;
      if (stem !== undefined) return stem + sounds;
    }
    return byLetters(word, spelling.letters);
  };
  return (word) => {
    let sounds = known.get(word);
    if (sounds === undefined) known.set(word, (sounds = bySpelling(word)));
    return sounds;
  };
}

const VOWEL = /[aeiouwycqvrzkjx]/;

function byLetters(word: string, rules: Spelling['letters']): Phones {
  let left = `^${word.replace(/([b-df-hj-np-tv-z])\1/g, '$1')}$`;
  let out = '';
  while (left !== '' && left !== '$') {
    const rule = rules.find(([letters]) => left.startsWith(letters));
    left = rule ? left.slice(rule[0].length) : left.slice(1);
    if (rule?.[0].endsWith('$')) left = '';
    out += rule?.[1] ?? '';
  }
  return stressed(out);
}

/** English and its neighbours mostly stress the first vowel. */
const stressed = (sounds: Phones): Phones => sounds.replace(VOWEL, (vowel) => vowel.toUpperCase());
