// Finding a setting by any word of its label or of what explains it.
import { wordsIn } from '../../logbook/search/words.ts';
import type { NamedSetting } from './named.ts';

/** Every word typed must begin a word of the setting. Those that carry it in their label come first; nothing typed finds nothing. */
export function findSettings(typed: string, all: readonly NamedSetting[]): readonly NamedSetting[] {
  const wanted = wordsIn(typed);
  if (wanted.length === 0) return [];
  const carries = (texts: readonly string[]): boolean => {
    const has = texts.flatMap(wordsIn);
    return wanted.every((word) => has.some((one) => one.startsWith(word)));
  };
  const byLabel = all.filter(({ label }) => carries([label]));
  return [...byLabel, ...all.filter((one) => !byLabel.includes(one) && carries([one.label, ...one.says]))];
}
