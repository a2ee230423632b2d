// English: whole numbers as they are said. Also what the panel speaks with, so it is there at once.

const ONES = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
] as const;

/** Index 2 is twenty. */
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'] as const;

/** A whole number from 0 to 1999. */
export function sayWhole(whole: number): string {
  if (whole >= 100) return [ONES[Math.floor(whole / 100)], 'hundred', ...(whole % 100 ? [sayWhole(whole % 100)] : [])].join(' ');
  if (whole < 20) return ONES[whole] ?? String(whole);
  const ten = TENS[Math.floor(whole / 10)] ?? '';
  return whole % 10 === 0 ? ten : `${ten} ${ONES[whole % 10]}`;
}
