// Contracts of what the matcher is made of: what stands around a word, how near words are, what is told in two parts.
import { describe, expect, test } from 'vitest';
import { ENGLISH } from '../../../src/hearing/languages/en/english.ts';
import type { Word } from '../../../src/sweep/inputs.ts';
import { commandsIn } from '../../../src/voice/phonetic/commands.ts';
import { courtesyIn } from '../../../src/voice/phonetic/courtesy.ts';
import { lookUpIn } from '../../../src/voice/phonetic/lookUp.ts';
import { pronouncer } from '../../../src/voice/phonetic/pronouncer.ts';
import { spokenWordsIn } from '../../../src/voice/phonetic/spokenText.ts';
import { pairsIn, remembering, twiceIn } from '../../../src/voice/phonetic/twoParts.ts';
import { INVENTED } from '../../hearing/languages/invented.ts';

const words = (text: string): string[] => text.split(' ').filter(Boolean);

describe('what stands around it', () => {
  const pronounce = pronouncer(ENGLISH.pronunciation);
  const around = courtesyIn(ENGLISH, pronounce);
  const trimmed = (text: string): string => around.trimmed(words(text)).join(' ');

  test('courtesy and thinking are left out at both ends, the longest phrase first, however often', () => {
    expect(
      ['please undo', 'undo thank you', 'okay um could you undo please thanks', 'undo please pause', 'i would like to undo', 'please thanks', ''].map(trimmed),
    ).toEqual(['undo', 'undo', 'undo', 'undo please pause', 'undo', '', '']);
  });

  const rests = (text: string) => around.restsOf(words(text)).map(({ words: left, cost, everyday }) => [left.join(' '), cost, everyday]);

  test('each way to leave something out costs, more for words of daily talk', () => {
    expect(rests('undo')).toEqual([['undo', 0, 0]]);
    expect(rests('please undo')).toEqual([['please undo', 0, 0], ['undo', 0.03, 0.03]]); // prettier-ignore
    expect(rests('the undo')).toEqual([['the undo', 0, 0], ['undo', 0.03, 0.05]]); // prettier-ignore
    expect(rests('it was the undo')).toEqual([['it was the undo', 0, 0], ['undo', 0.09, expect.closeTo(0.05 + 0.15 + 0.06, 9)]]); // prettier-ignore
    expect(rests('please undo now')).toEqual([['please undo now', 0, 0], ['undo now', 0.03, 0.03], ['undo', 0.03, Infinity]]); // prettier-ignore
  });

  test('nothing is left out where nothing else would be left', () => {
    expect(rests('it was the')).toEqual([['it was the', 0, 0]]);
    expect(rests('please')).toEqual([['please', 0, 0]]);
    expect([around.isEveryday('right'), around.isEveryday('undo')]).toEqual([true, false]);
  });
});

describe('how near words are', () => {
  const nearestIn = (language: typeof INVENTED) => {
    const pronounce = pronouncer(language.pronunciation);
    return commandsIn(language, pronounce, courtesyIn(language, pronounce));
  };
  const nearest = nearestIn(INVENTED);
  const ALL: readonly Word[] = ['undo', 'holding', 'solid', 'skip'];
  const apart = (text: string, word: Word, allowed = ALL): number | null => nearest(words(text), allowed).find((one) => one.word === word)?.apart ?? null;

  test('the taught phrase and one that is also accepted are it', () => {
    expect([apart('fezu', 'undo'), apart('fezu ta', 'undo')]).toEqual([0, 0]);
    expect(nearest(['fezu'], ALL)[0]).toEqual({ word: 'undo', apart: 0 });
  });

  test('a known spelling is nearly it', () => {
    expect(apart('chwany', 'holding')).toBeCloseTo(0.09, 9);
  });

  test('said twice it is it, beside one stray word it is far, beside two it is not', () => {
    expect(apart('fezu fezu', 'undo')).toBe(0);
    expect(apart('fezu drako', 'undo')).toBeCloseTo(0.25, 9);
    expect(apart('eh fezu', 'undo')).toBeCloseTo(0.03, 9);
    expect(apart('fezu drako bistu', 'undo')).toBeNull();
  });

  test('what does not count now is not told, and what is far from it neither', () => {
    expect([apart('fezu', 'undo', ['skip']), apart('wanimo', 'undo')]).toEqual([null, null]);
  });

  test('the nearest comes first', () => {
    const found = nearest(words('fezu vipo'), ALL);
    expect(found.map(({ apart: far }) => far)).toEqual(found.map(({ apart: far }) => far).toSorted((a, b) => a - b));
    expect(new Set(found.slice(0, 2).map(({ word }) => word))).toEqual(new Set(['undo', 'skip']));
  });

  test('another form of a word costs 0.12 at most', () => {
    const english = nearestIn(ENGLISH);
    const form = english(['skipped'], ['skip']).find(({ word }) => word === 'skip');
    expect(form?.apart).toBeGreaterThan(0);
    expect(form?.apart).toBeLessThanOrEqual(0.12);
  });
});

describe('two parts', () => {
  const near = (known: Readonly<Record<string, readonly [Word, number]>>) => (heard: readonly string[]) => {
    const found = known[heard.join(' ')];
    return found ? [{ word: found[0] as Exclude<Word, 'set'>, apart: found[1] }] : [];
  };
  const told = near({ a: ['flicker', 0.1], b: ['left', 0.2], 'b c': ['right', 0.05], u: ['undo', 0.1], v: ['undo', 0.3], w: ['pause', 0.1] });
  const ALLOWED: readonly Word[] = ['flicker', 'left', 'right', 'undo'];
  const pairs = (text: string, allowed = ALLOWED) =>
    pairsIn(words(text), allowed, told, ENGLISH.words).map(({ words: said, apart, doubtful, input }) => [said, apart, doubtful, input.told]);

  test('a light and its arrows are one verdict, in either order, as far as the farther of them', () => {
    expect([pairs('a b'), pairs('b a'), pairs('a b c')]).toEqual([[['flicker left', 0.2, false, 'verdict']], [['flicker left', 0.2, false, 'verdict']], [['flicker right', 0.1, false, 'verdict']]]); // prettier-ignore
  });

  test('both must count and be there, in seven words at most', () => {
    expect([pairs('a'), pairs('a u'), pairs('a b', ['flicker']), pairs('a b', ['left'])]).toEqual([[], [], [], []]);
    const long = (count: number) => near({ a: ['flicker', 0.1], [Array.from({ length: count - 1 }, () => 'x').join(' ')]: ['left', 0.1] });
    const of = (count: number) => pairsIn(['a', ...Array.from({ length: count - 1 }, () => 'x')], ALLOWED, long(count), ENGLISH.words).length;
    expect([of(7), of(8)]).toEqual([1, 0]);
  });

  test('one word twice, heard in two ways, is that word; four words at most', () => {
    const twice = (text: string) => twiceIn(words(text), told, ENGLISH.words).map(({ words: said, apart }) => [said, apart]);
    expect([twice('u v'), twice('u w'), twice('u'), twice('u x')]).toEqual([[['undo', 0.3]], [], [], []]);
    const of = (count: number) => twiceIn(['u', ...Array.from({ length: count - 1 }, () => 'x')], near({ u: ['undo', 0], [Array.from({ length: count - 1 }, () => 'x').join(' ')]: ['undo', 0] }), ENGLISH.words).length; // prettier-ignore
    expect([of(4), of(5)]).toEqual([1, 0]);
  });

  test('the same row of words is asked about once', () => {
    let asked = 0;
    const remembered = remembering(() => {
      asked += 1;
      return [];
    }, ALLOWED);
    remembered(['a', 'b']);
    remembered(['a', 'b']);
    remembered(['a b', 'c']);
    expect(asked).toBe(2);
  });
});

describe('a question to the logbook', () => {
  const pronounce = pronouncer(ENGLISH.pronunciation);
  const asked = lookUpIn(ENGLISH, pronounce, courtesyIn(ENGLISH, pronounce));
  const query = (text: string, ...named: string[]) => asked(words(text), named);

  test('is what follows its opening, whatever that is; behind an everyday one only where a number or a name is sought', () => {
    expect([query('look up the old one'), query('look up'), query('check the eighty five'), query('check the door'), query('check the orrin', 'orrin')]).toEqual(['the old one', '', 'eighty five', null, 'orrin']); // prettier-ignore
  });

  test('may end with what asks, in a language whose verb stands last, where a number or a name stands before it', () => {
    const last = { ...INVENTED, question: { ...INVENTED.question, closings: ['pado', 'li pado'] } };
    const own = pronouncer(last.pronunciation);
    const behind = lookUpIn(last, own, courtesyIn(last, own));
    const before = (text: string, ...named: string[]) => behind(words(text), named);
    expect([before('foso luma pado'), before('eh foso li pado'), before('tak pado'), before('tak pado', 'tak'), before('pado'), before('foso')]).toEqual([
      'foso luma',
      'foso',
      null,
      'tak',
      null,
      null,
    ]);
  });

  test('need only sound like one before a number', () => {
    expect([query('luke up fifty'), query('luke up the door'), query('luke up orrin', 'orrin'), query('fifty'), query('window fifty')]).toEqual([
      'fifty',
      null,
      'orrin',
      null,
      null,
    ]);
  });
});

test('figures, signs and marks come to words', () => {
  const spoken = spokenWordsIn(ENGLISH);
  const said = (text: string) => spoken(text).join(' ');
  expect(['set +7', 'set–12', 'minus 3.5', '24-70', '1st', '999', '1000', "It's 85mm"].map(said)).toEqual([
    'set plus seven',
    'set minus twelve',
    'minus three point five',
    'twenty four seventy',
    'one',
    'nine hundred ninety nine',
    '1 0 0 0',
    'its eighty five mm',
  ]);
});
