// Many words in one number, where a snapshot of all of them would be too long to read: another letter, or another place of it, is
// another number.
import { summed } from '../../kept/summed.ts';

export const textSum = (words: readonly string[]): number => summed([...words.join('|')].map((letter) => letter.charCodeAt(0))) % 1_000_003;
