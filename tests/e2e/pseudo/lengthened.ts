// English as a language might be that needs more room: each message half as long again, with accents, in brackets, so that a
// message that is cut, glued together or not from the catalogue shows at once. Runs in the panel and in the tests alike.

const ACCENTS: Readonly<Record<string, string>> = { a: 'á', e: 'é', i: 'í', o: 'ö', u: 'ü', y: 'ý', A: 'Á', E: 'É', I: 'Í', O: 'Ö', U: 'Ü', c: 'ç', n: 'ñ' };
/** What the longer half is made of: words with gaps, as those of a sentence have. */
const FILL = 'lörem ípsüm dölör sít ámét ';

/** A message within another keeps one pair of brackets, and is not lengthened twice. */
export function lengthened(message: string): string {
  if (!/\p{L}{2,}/u.test(message)) return message;
  const inner = message.replaceAll(/⟦(.*?)⟧/gu, '$1');
  const wordsOfOurs = [...message.replaceAll(/⟦.*?⟧/gu, '')].length;
  const more = Math.ceil(wordsOfOurs / 2);
  const accented = [...inner].map((letter) => ACCENTS[letter] ?? letter).join('');
  return `⟦${accented} ${FILL.repeat(Math.ceil(more / FILL.length))
    .slice(0, Math.max(1, more - 3))
    .trim()}⟧`;
}

/** Every message of an area, also those that take values. */
export function inPseudo<Area>(words: Area): Area {
  if (typeof words === 'string') return lengthened(words) as Area;
  if (typeof words === 'function') return ((...values: unknown[]) => inPseudo((words as (...all: unknown[]) => unknown)(...values))) as Area;
  if (Array.isArray(words)) return words.map(inPseudo) as Area;
  if (typeof words !== 'object' || words === null || words.constructor !== Object) return words;
  // Some are made when they are read.
  const lazy = Object.keys(words).map((name) => [name, { get: (): unknown => inPseudo((words as Record<string, unknown>)[name]), enumerable: true }] as const);
  return Object.defineProperties({}, Object.fromEntries(lazy)) as Area;
}

/** The English of what is shown in the longer language: without accents, brackets and filling. */
export const plainly = (shown: string): string => [...shown.replaceAll(/[⟦⟧]/gu, '').trim()].map((letter) => PLAIN.get(letter) ?? letter).join('');

const PLAIN = new Map(Object.entries(ACCENTS).map(([plain, accented]) => [accented, plain]));
