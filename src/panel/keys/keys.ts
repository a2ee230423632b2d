// Which key stands for which word. A key may stand for two words that are never understood at the same time.
import type { Word } from '../../sweep/inputs.ts';
import { words } from '../../words/catalogue.ts';

/** The keys of the one switch; pedals and clickers send one of these. */
const SWITCH_KEYS: readonly (' ' | 'Enter' | 'PageDown' | 'PageUp')[] = [' ', 'Enter', 'PageDown', 'PageUp'];

/** The key of each word, as `KeyboardEvent.key` gives it in lower case; `holding` belongs to the switch. */
const KEY: Record<Word, string> = {
  solid: 's',
  delayed: 'd',
  flicker: 'f',
  nothing: 'n',
  left: 'arrowleft',
  right: 'arrowright',
  balanced: 'b',
  lopsided: 'l',
  holding: ' ',
  undo: 'u',
  repeat: 'r',
  pause: 'p',
  resume: 'p',
  skip: 'k',
  accept: 'a',
  'go on': 'g',
  set: 'v',
  same: 's',
  shifted: 'm',
  finish: 'x',
  help: '?',
  entered: 'e',
  next: 'n',
  back: 'b',
  'far view': 'w',
};

const ARROW: Partial<Record<string, string>> = { arrowleft: '\u2190', arrowright: '\u2192' };

/** The key as it is printed on the keyboard. */
export const capOf = (word: Word): string => (KEY[word] === ' ' ? words('sweep').space : (ARROW[KEY[word]] ?? KEY[word].toUpperCase()));

/** The word a key stands for among those understood now, or null. */
export const wordOfKey = (key: string, understood: readonly Word[]): Word | null => understood.find((word) => KEY[word] === key.toLowerCase()) ?? null;

export const isSwitchKey = (key: string): boolean => SWITCH_KEYS.some((one) => one === key);
