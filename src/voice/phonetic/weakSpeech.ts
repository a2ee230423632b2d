// Where speech is weak a sound is easily missed, and where a word begins it is not: what it costs to miss one beside others
// (Shockey, Sound Patterns of Spoken English, 2003; Marslen-Wilson and Zwitserlood 1989 for the beginnings). The shares are by
// trial on the transcripts of the bench, no source.
import type { Phones } from '../../hearing/languages/sounds.ts';
import { articulationOf, isVowel, loss } from './phones.ts';

/** What it costs to miss a sound among others, or to hear one that was not there: less where speech is weak (Shockey 2003). */
export function lossBeside(before: string | undefined, phone: string, after: string | undefined): number {
  const whole = loss(phone);
  if (isVowel(phone)) {
    // Two vowels run together; a weak first syllable is swallowed.
    if ((before !== undefined && isVowel(before)) || (after !== undefined && isVowel(after))) return 0.5 * whole;
    return before === undefined && isWeak(phone) ? 0.5 * whole : whole;
  }
  const manner = articulationOf(phone);
  // The first consonant is what a word is known by (Marslen-Wilson and Zwitserlood 1989); breath alone is not.
  if (before === undefined && phone !== 'h') return 1.4 * whole;
  // A nasal at the end is heard in the vowel before it.
  if (after === undefined && manner === 'nasal') return 0.7 * whole;
  const isStop = manner === 'stop';
  // A stop at the end, or beside another consonant, is not released.
  const isUnreleased = isStop && (after === undefined || !isVowel(after) || (before !== undefined && !isVowel(before)));
  return isUnreleased ? 0.7 * whole : whole;
}

/** "Uh", "er", "hmm": breath, voice and the lips, with nothing that the tongue makes. */
export const isHesitation = (phones: Phones): boolean => [...phones].some(isVowel) && [...phones].every((phone) => HESITATION.includes(phone.toLowerCase()));
const HESITATION = 'hmuro';

const isWeak = (phone: string): boolean => phone === phone.toLowerCase();
