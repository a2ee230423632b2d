// How a word that was said comes to be another: one sound is taken for a neighbour of it, or goes missing where speech is
// weak. The vowels are those confused in Peterson and Barney 1952 (table III), the consonants those of Miller and Nicely
// 1955 (voice and nasality hold, place does not); weak syllables and word ends after Shockey, Sound Patterns of Spoken
// English, 2003. From memory, and as rules, not as rates. Knows nothing of the matcher that is held against what comes out.

/** Sounds of the Carnegie Mellon pronouncing dictionary, vowels with their stress 0, 1 or 2. */
export type Sounds = readonly string[];

const VOWELS: readonly (readonly [string, string])[] = [
  ['IH', 'EH'],
  ['EH', 'AE'],
  ['AA', 'AO'],
  ['AH', 'AA'],
  ['IY', 'IH'],
  ['UH', 'UW'],
  ['OW', 'AO'],
  ['AH', 'UH'],
];
const CONSONANTS: readonly (readonly [string, string])[] = [
  ['TH', 'F'],
  ['TH', 'T'],
  ['DH', 'D'],
  ['V', 'F'],
  ['V', 'B'],
  ['P', 'K'],
  ['P', 'T'],
  ['M', 'N'],
  ['NG', 'N'],
  ['S', 'SH'],
  ['S', 'TH'],
];
/** Told apart by little more than the length of the vowel before them, at the end of a word. */
const FINAL: readonly (readonly [string, string])[] = [
  ['T', 'D'],
  ['P', 'B'],
  ['K', 'G'],
  ['S', 'Z'],
  ['F', 'V'],
];
const WEAK = ['AH0', 'IH0', 'ER0', 'IY0'];
const isVowel = (sound: string): boolean => /\d$/.test(sound);
const bare = (sound: string): string => sound.replace(/\d$/, '');

const across = (pairs: typeof VOWELS, sound: string): string[] =>
  pairs.flatMap(([a, b]) => (bare(sound) === a ? [b] : bare(sound) === b ? [a] : [])).map((other) => other + sound.slice(bare(sound).length));

/** Everything one mishearing away. */
export function misheard(said: Sounds): Sounds[] {
  const out: Sounds[] = [];
  const put = (at: number, many: number, ...by: string[]) => out.push([...said.slice(0, at), ...by, ...said.slice(at + many)]);
  said.forEach((sound, at) => {
    const isLast = at === said.length - 1;
    const next = said[at + 1];
    if (isVowel(sound) && sound.endsWith('0')) {
      for (const weak of WEAK) if (weak !== sound) put(at, 1, weak);
      // A weak first syllable that is only a vowel, or a weak vowel between consonants, is swallowed.
      if (at === 0 || !isLast) put(at, 1);
    } else if (isVowel(sound)) {
      for (const other of across(VOWELS, sound)) put(at, 1, other);
    } else {
      for (const other of across(CONSONANTS, sound)) put(at, 1, other);
      if (isLast || !isVowel(next ?? '')) for (const other of across(FINAL, sound)) put(at, 1, other);
      if (sound === 'HH') put(at, 1);
      // The last of several consonants, or a stop before one, is not released.
      const inCluster = (at > 0 && !isVowel(said[at - 1] ?? '')) || (next !== undefined && !isVowel(next));
      if (inCluster && at > 0 && ['T', 'D', 'K', 'P', 'TH'].includes(sound)) put(at, 1);
    }
    if (isLast) for (const more of ['S', 'Z', 'D', 'T']) put(at + 1, 0, more);
  });
  return out;
}
