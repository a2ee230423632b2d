// Spanish: whole numbers as they are said. Also what the panel speaks with, so it is there at once.

const BELOW_THIRTY = [
  'cero, uno, dos, tres, cuatro, cinco, seis, siete, ocho, nueve',
  'diez, once, doce, trece, catorce, quince, dieciséis, diecisiete, dieciocho, diecinueve',
  'veinte, veintiuno, veintidós, veintitrés, veinticuatro, veinticinco, veintiséis, veintisiete, veintiocho, veintinueve',
].flatMap((several) => several.split(', '));

/** Index 3 is thirty. */
const TENS = ['', '', '', 'treinta', 'cuarenta', 'cincuenta', 'sesenta', 'setenta', 'ochenta', 'noventa'] as const;

/** Index 0 is a hundred with something after it. */
const HUNDREDS = ['ciento, doscientos, trescientos, cuatrocientos', 'quinientos, seiscientos, setecientos, ochocientos, novecientos'].flatMap((several) =>
  several.split(', '),
);

/** A whole number from 0 to 1999. */
export function sayWhole(whole: number): string {
  if (whole >= 1000) return whole === 1000 ? 'mil' : `mil ${sayWhole(whole - 1000)}`;
  if (whole === 100) return 'cien';
  if (whole >= 100) return [HUNDREDS[Math.floor(whole / 100) - 1], ...(whole % 100 ? [sayWhole(whole % 100)] : [])].join(' ');
  if (whole < 30) return BELOW_THIRTY[whole] ?? String(whole);
  const ten = TENS[Math.floor(whole / 10)] ?? '';
  return whole % 10 === 0 ? ten : `${ten} y ${sayWhole(whole % 10)}`;
}
