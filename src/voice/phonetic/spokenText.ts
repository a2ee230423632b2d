// A recogniser's text as plain words: its marks, accents and figures undone, whichever way it chose to write them.
import { sayNumber } from '../numbers.ts';

const MINUS = '[-\\u2010-\\u2015\\u2212]';

/** Lower-case words without accents; signs and figures in words, "set–12" is "set minus twelve". */
export function spokenWords(text: string): string[] {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/['\u2018\u2019]/g, '')
    .replace(/(\d)(?:st|nd|rd|th)\b/g, '$1')
    .replace(/\+/g, ' plus ')
    .replace(new RegExp(`(^|[^\\d])${MINUS}\\s*(?=\\d)`, 'g'), '$1 minus ')
    .replace(/(\d)(?=\p{L})/gu, '$1 ')
    .replace(/\d+/g, (figures) => ` ${figures.length <= 3 ? sayNumber(Number(figures)) : [...figures].join(' ')} `)
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
}
