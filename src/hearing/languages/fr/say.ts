// French: whole numbers as they are said in France. Also what the panel speaks with, so it is there at once.

const ONES = [
  'zéro',
  'un',
  'deux',
  'trois',
  'quatre',
  'cinq',
  'six',
  'sept',
  'huit',
  'neuf',
  'dix',
  'onze',
  'douze',
  'treize',
  'quatorze',
  'quinze',
  'seize',
  'dix-sept',
  'dix-huit',
  'dix-neuf',
] as const;

/** Index 2 is twenty; seventy is sixty and ten, ninety is eighty and ten. */
const TENS = ['', '', 'vingt', 'trente', 'quarante', 'cinquante', 'soixante', 'soixante', 'quatre-vingt', 'quatre-vingt'] as const;

/** A whole number from 0 to 1999. */
export function sayWhole(whole: number): string {
  if (whole >= 1000) return whole === 1000 ? 'mille' : `mille ${sayWhole(whole % 1000)}`;
  if (whole >= 100) return sayHundreds(Math.floor(whole / 100), whole % 100);
  if (whole < 20) return ONES[whole] ?? String(whole);
  if (whole === 80) return 'quatre-vingts';
  const ten = Math.floor(whole / 10);
  const rest = whole - 10 * (ten === 7 || ten === 9 ? ten - 1 : ten);
  return joined(TENS[ten] ?? '', rest, ten < 8);
}

/** "Cent", "deux cents", "deux cent un". */
function sayHundreds(hundreds: number, rest: number): string {
  const head = hundreds === 1 ? 'cent' : `${sayWhole(hundreds)} cent${rest === 0 ? 's' : ''}`;
  return rest === 0 ? head : `${head} ${sayWhole(rest)}`;
}

/** What follows the tens: "vingt et un", "soixante et onze", but "quatre-vingt-un". */
export function joined(ten: string, rest: number, withAnd: boolean): string {
  if (rest === 0) return ten;
  return withAnd && (rest === 1 || rest === 11) ? `${ten} et ${sayWhole(rest)}` : `${ten}-${sayWhole(rest)}`;
}
