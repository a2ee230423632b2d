// Changes of src/hearing from which nothing follows, and why.
import type { Same } from './same.ts';

export const HEARING: readonly Same[] = [
  {
    file: 'src/hearing/languages/de/numbers.ts',
    line: 'const apart = whole >= 110 &&',
    after: '(whole % 100 >= 10)',
    why: 'Only numbers from a hundred on come here, and none below 110 has ten or more behind its hundred.',
  },
  { file: 'src/hearing/languages/de/sayCorrection.ts', line: 'value > 0 ?', after: '>=', why: 'Nought has been said before.' },
  { file: 'src/hearing/languages/en/sayCorrection.ts', line: 'value > 0 ?', after: '>=', why: 'Nought has been said before.' },
  { file: 'src/hearing/languages/es/numbers.ts', line: 'if (whole > 20 && !APERTURES', after: '>=', why: 'Twenty has been said before, as all tens.' },
  {
    file: 'src/hearing/languages/es/numbers.ts',
    line: 'if (whole > 20 && !APERTURES',
    after: '21',
    why: 'An aperture may begin with one, so 21 is left out in any case.',
  },
  { file: 'src/hearing/languages/es/numbers.ts', line: 'if (whole > 30) ways.push', after: '>=', why: 'Thirty has been said before, as all tens.' },
  { file: 'src/hearing/languages/es/numbers.ts', line: 'else ways.push(`${whole < 20 ?', after: '<=', why: 'Twenty has been said before, as all tens.' },
  { file: 'src/hearing/languages/es/numbers.ts', line: 'else ways.push(`${whole < 20 ?', after: '21', why: 'Twenty has been said before, as all tens.' },
  {
    file: 'src/hearing/languages/es/numbers.ts',
    line: "return one === 'uno' ? ways",
    after: "ways.flatMap((way) => [way, way.replace(/uno$/, 'un'), way.replace(/uno$/, 'ún')])",
    why: 'No other number ends so, and what comes several times is told once.',
  },
  {
    file: 'src/hearing/languages/es/numbers.ts',
    line: 'if (whole >= 1000) return',
    after: '>',
    why: 'A thousand is one word without accents, whichever way it is put together.',
  },
  { file: 'src/hearing/languages/es/numbers.ts', line: 'if (whole >= 1000) return', after: '1001', why: 'The same.' },
  { file: 'src/hearing/languages/es/say.ts', line: 'if (whole >= 100) return [HUNDREDS', after: '>', why: 'A hundred has been said before.' },
  { file: 'src/hearing/languages/es/say.ts', line: 'if (whole >= 100) return [HUNDREDS', after: '101', why: 'A hundred has been said before.' },
  { file: 'src/hearing/languages/es/sayCorrection.ts', line: 'value > 0 ?', after: '>=', why: 'Nought has been said before.' },
  { file: 'src/hearing/languages/fr/sayCorrection.ts', line: 'value > 0 ?', after: '>=', why: 'Nought has been said before.' },
  {
    file: 'src/hearing/languages/ja/letters.ts',
    line: 'const consonant = sounds.slice(0, -1);',
    after: '1',
    why: 'Each of these kana has one consonant and one vowel.',
  },
  { file: 'src/hearing/languages/ja/sayCorrection.ts', line: 'value > 0 ?', after: '>=', why: 'Nought has been said before.' },
];
