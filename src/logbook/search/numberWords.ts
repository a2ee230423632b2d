// Numbers as photographers say them, written in figures: "eighty-five", "one thirty-five", "one oh five", "twenty-four
// seventy", "two hundred", "one point eight", and a letter with its number, "M one". What may be said is made of how the
// language says a number.
import type { SaidNumbers } from '../../hearing/languages/heardLanguage.ts';
import { phrasesOf } from './numberPhrases.ts';
import { fold } from './words.ts';

export interface NumberWords {
  /** The text with every number word in figures; all other words as they were but for their accents, parted by single blanks. */
  inFigures(text: string): string;
  /** Digits told one after another are one number: "eight five" is 85, and a serial number is as long as it is. */
  digitsJoined(text: string): string;
}

interface Written {
  readonly text: string;
  /** Where the next word stands. */
  readonly next: number;
}

const FIGURES = /^\d+$/;

export function numberWordsIn(numbers: SaidNumbers): NumberWords {
  const { sizes, longest, hundred, digits, tens } = phrasesOf(numbers);
  const [point, zeros] = [fold(numbers.point), numbers.zeros.map(fold)];
  const digitOf = (word: string | undefined): string | null => {
    if (word === undefined) return null;
    if (FIGURES.test(word)) return word;
    const digit = sizes.get(word);
    return digit === undefined || digit > 9 ? null : String(digit);
  };

  /** The longest phrase that stands there; its last digit may count the hundreds of the next: "seventy two hundred". */
  function phraseAt(words: readonly string[], at: number): Written | null {
    const fitting: { size: number; next: number }[] = [];
    for (let length = Math.min(longest, words.length - at); length > 0; length--) {
      const size = sizes.get(words.slice(at, at + length).join(' '));
      if (size !== undefined) fitting.push({ size, next: at + length });
    }
    const [first, second] = fitting;
    const best = first && second && words[first.next] === hundred ? second : first;
    return best ? { text: String(best.size), next: best.next } : null;
  }

  function letterAt(words: readonly string[], at: number): Written | null {
    const word = words[at] ?? '';
    const digit = numbers.letter.test(word) && words[at + 1] !== digits[0] ? digitOf(words[at + 1]) : null;
    return digit === null ? null : { text: `${word}${Number(digit)}`, next: at + 2 };
  }

  function numberAt(words: readonly string[], at: number): Written | null {
    const word = words[at] ?? '';
    return FIGURES.test(word) ? { text: word, next: at + 1 } : phraseAt(words, at);
  }

  /** "Point eight", after the whole part. */
  function withDecimals(words: readonly string[], whole: Written): Written {
    if (words[whole.next] !== point) return whole;
    let next = whole.next + 1;
    let decimals = '';
    for (let word = words[next]; word !== undefined; word = words[next]) {
      const digit = zeros.includes(word) ? '0' : digitOf(word);
      if (digit === null) break;
      decimals += digit;
      next++;
    }
    return decimals === '' ? whole : { text: `${whole.text}.${decimals}`, next };
  }

  const digitWords = [...sizes].flatMap(([words, size]) => (size <= 9 && !words.includes(' ') ? [words] : []));
  const digit = `(?:${digitWords.join('|')}|\\d)`;
  /** Not the end of "thirty five". */
  const run = new RegExp(`(?<!(?:${tens.join('|')})[\\s-]+)(?<![\\p{L}\\p{N}_])${digit}(?:\\s+${digit})+(?![\\p{L}\\p{N}_])`, 'gu');

  return {
    inFigures(text) {
      const words = fold(text)
        .split(/[\s-]+/)
        .filter((word) => word !== '');
      const written: string[] = [];
      for (let at = 0; at < words.length;) {
        const number = letterAt(words, at) ?? numberAt(words, at);
        const whole = number ? withDecimals(words, number) : { text: words[at] ?? '', next: at + 1 };
        written.push(whole.text);
        at = whole.next;
      }
      return written.join(' ');
    },
    digitsJoined: (text) => fold(text).replace(run, (said) => said.replace(/\p{L}+/gu, (word) => String(sizes.get(word))).replace(/\s+/g, '')),
  };
}
