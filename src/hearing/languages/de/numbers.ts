// German: numbers as they are heard, of a correction, a lens or a serial number.
import type { SaidNumbers } from '../heardLanguage.ts';
import { sayWhole } from './say.ts';

/** As words are compared: without dots. */
const bare = (words: string): string => words.replaceAll('ü', 'u').replaceAll('ö', 'o');

/** "Zwo"; in two words, "ein und zwanzig"; as they write in Switzerland; without dots. */
function waysOf(words: string): string[] {
  const ways = [words, words.replaceAll(/zwei(?!$)|zwei$/g, 'zwo')];
  const parted = ways.map((way) => way.replace(/(?<=[a-zß])und(?=[zdvfsan])/, ' und '));
  const swiss = [...ways, ...parted].map((way) => way.replace('dreißig', 'dreissig'));
  return [...ways, ...parted, ...swiss].flatMap((way) => [way, bare(way)]);
}

/** "Hundertfünf", "hundert fünf", "hundertundfünf"; "eins fünfunddreißig"; "neunzehnhundert". */
function hundreds(whole: number): string[] {
  const rest = whole % 100 === 0 ? '' : sayWhole(whole % 100);
  const head = sayWhole(whole - (whole % 100));
  const heads = [head, ...(whole < 200 ? ['hundert'] : []), ...(whole >= 1100 ? [`${sayWhole(Math.floor(whole / 100))}hundert`] : [])];
  const apart = whole >= 110 && whole % 100 >= 10 ? [`${sayWhole(Math.floor(whole / 100))} ${rest}`] : [];
  return [...heads.flatMap((one) => (rest === '' ? [one] : [`${one}${rest}`, `${one} ${rest}`, `${one}und${rest}`, `${one} und ${rest}`])), ...apart];
}

const also = (whole: number): readonly string[] => {
  const plain = sayWhole(whole);
  const ways = (whole < 100 ? [plain] : hundreds(whole)).flatMap(waysOf);
  return [...new Set(ways)].filter((way) => way !== plain);
};

export const NUMBERS: SaidNumbers = {
  say: sayWhole,
  also,
  zeros: [],
  point: 'komma',
  letter: /^[a-z]$/,
  // "Das 85er".
  ordinals: ['er', 'ers', 'ern', 'te', 'ten', 'ter', 'tes', 'ste', 'sten', 'ster', 'stes'],
};
