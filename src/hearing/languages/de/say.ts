// German: whole numbers as they are said. Also what the panel speaks with, so it is there at once.

const ONES = [
  'null',
  'eins',
  'zwei',
  'drei',
  'vier',
  'fünf',
  'sechs',
  'sieben',
  'acht',
  'neun',
  'zehn',
  'elf',
  'zwölf',
  'dreizehn',
  'vierzehn',
  'fünfzehn',
  'sechzehn',
  'siebzehn',
  'achtzehn',
  'neunzehn',
] as const;

/** Index 2 is twenty. */
const TENS = ['', '', 'zwanzig', 'dreißig', 'vierzig', 'fünfzig', 'sechzig', 'siebzig', 'achtzig', 'neunzig'] as const;

/** Before another part of the number "eins" loses its end: "einundzwanzig", "einhundert". */
const joined = (digit: number): string => (digit === 1 ? 'ein' : (ONES[digit] ?? ''));

/** A whole number from 0 to 1999. */
export function sayWhole(whole: number): string {
  if (whole >= 1000) return `eintausend${whole % 1000 ? sayWhole(whole % 1000) : ''}`;
  if (whole >= 100) return `${joined(Math.floor(whole / 100))}hundert${whole % 100 ? sayWhole(whole % 100) : ''}`;
  if (whole < 20) return ONES[whole] ?? String(whole);
  const ten = TENS[Math.floor(whole / 10)] ?? '';
  return whole % 10 === 0 ? ten : `${joined(whole % 10)}und${ten}`;
}
