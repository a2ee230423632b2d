// French: numbers as they are heard, of a correction, a lens or a serial number.
import type { SaidNumbers } from '../heardLanguage.ts';
import { joined, sayWhole } from './say.ts';

/** Seventy to ninety as they are said in Belgium and Switzerland. */
const REGIONAL: Readonly<Record<number, readonly string[]>> = { 7: ['septante'], 8: ['huitante', 'octante'], 9: ['nonante'] };

/** Below a hundred, in every way: "septante et un", "quatre vingt", and "une" for "un". */
function waysBelowHundred(whole: number): string[] {
  const regional = (REGIONAL[Math.floor(whole / 10)] ?? []).map((ten) => joined(ten, whole % 10, true));
  const ways = [sayWhole(whole), ...regional, ...(whole === 80 ? ['quatre-vingt'] : [])];
  return whole % 10 === 1 && whole !== 11 ? [...ways, ...ways.map((way) => way.replace(/\bun$/, 'une'))] : ways;
}

/** "Deux cent" as it is written for "deux cents", and the rest in every way. */
function also(whole: number): readonly string[] {
  const [hundreds, rest] = [Math.floor(whole / 100), whole % 100];
  const head = hundreds === 0 ? '' : sayWhole(100 * hundreds).replace(/s$/, '');
  const ways = rest === 0 ? [head] : waysBelowHundred(rest).map((way) => `${head} ${way}`.trim());
  return ways.filter((way) => way !== '');
}

export const NUMBERS: SaidNumbers = {
  say: sayWhole,
  also,
  zeros: [],
  point: 'virgule',
  // "A" and "y" are words.
  letter: /^[b-xz]$/,
  ordinals: ['ers?', 'ere', 're', 'emes?', 'es?', 'nde?'],
};
