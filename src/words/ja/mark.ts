// Japanese: what the mark says while voice is off; there at once with the first screen, unlike every other area.
import type { MarkWords } from '../markWords.ts';

export const words: MarkWords = { word: '音声オフ', press: '音声オフ：音声操作をオンにする' };
