import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ENGLISH_WRITTEN } from '../../src/hearing/languages/en/vocabulary.ts';
import { USUAL_LIMITS } from '../../src/logbook/due.ts';
import { finderOf, lookUpSpoken, lookUpTyped } from '../../src/logbook/search/finder.ts';
import { numberWordsIn } from '../../src/logbook/search/numberWords.ts';
import { slipsToBegin } from '../../src/logbook/search/typo.ts';
import { shelfOf, type Shelved } from '../../src/logbook/shelf.ts';
import { words } from '../../src/words/catalogue.ts';
import { libraryWith, T0 } from './libraryWith.ts';

const library = libraryWith({
  bodies: [
    { id: 'old', name: 'Velde M1, the old body', serial: '004711' },
    { id: 'new', name: 'Velde M2' },
  ],
  lenses: [
    { id: '85', name: 'Orrin 85 f/1.8', serial: 'KX-20931' },
    { id: '35', name: 'Orrin 35 f/2' },
    { id: 'zoom', name: 'Tessel 24–70 f/2.8' },
    { id: 'ö', name: 'Örebro 135' },
  ],
  situations: [
    { id: '85 old', body: 'old', lens: '85' },
    { id: '85 new', body: 'new', lens: '85' },
    { id: '35 old', body: 'old', lens: '35', focalLength: 35, distance: 1750 },
    { id: 'wide', body: 'new', lens: 'zoom', focalLength: 24, distance: 1200 },
    { id: 'tele', body: 'new', lens: 'zoom', focalLength: 70, distance: 3500 },
    { id: '135', body: 'new', lens: 'ö', focalLength: 135, distance: 6750 },
  ],
  entries: [
    {
      id: 'e',
      subject: { situation: '85 old', body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: 85, distance: 4250 },
      value: 6,
    },
  ],
});
const shelf = shelfOf(library, { at: T0, temperature: null }, USUAL_LIMITS);
const finder = finderOf(ENGLISH_WRITTEN, library.kit, shelf);
const ids = (found: readonly Shelved[]) => found.map(({ subject }) => subject.situation);
const typed = (query: string) => ids(lookUpTyped(finder, query));
const spoken = (phrase: string) => ids(lookUpSpoken(finder, phrase));

describe('look-up as one types', () => {
  it('finds by names, focal lengths, distances and serials, in any order', () => {
    expect(typed('85 old')).toEqual(['85 old']);
    expect(typed('old 85')).toEqual(['85 old']);
    expect(typed('orrin 35')).toEqual(['35 old']);
    expect(typed('tessel 70mm')).toEqual(['tele']);
    expect(typed('3.5m')).toEqual(['tele']);
    expect(typed('3,5m')).toEqual(['tele']);
    expect(typed('f/1.8 m2')).toEqual(['85 new']);
    expect(typed('20931 m1')).toEqual(['85 old']);
    expect(typed('4711 35')).toEqual(['35 old']);
    expect(typed('orebro')).toEqual(['135']);
    expect(typed('135')).toEqual(['135']);
  });

  it('narrows with every letter and puts what fits whole first', () => {
    for (const query of ['t', 'te', 'tes', 'tess', 'tesse', 'tessel', 'tessel ', 'tessel 2']) expect(typed(query)).toContain('wide');
    expect(typed('35')[0]).toBe('35 old');
  });

  it('forgives small slips where nothing fits as typed', () => {
    expect(typed('orin 85 old')).toEqual(['85 old']);
    expect(typed('tesesl 24')).toEqual(['wide', 'tele']);
    expect(typed('veled 35')).toEqual(['35 old']);
    expect(typed('kx 20391')).toEqual(['85 old', '85 new']);
    expect(typed('86')).toEqual([]);
    expect(typed('zzzz')).toEqual([]);
  });

  it('shows everything while nothing is typed, the newest value first', () => {
    expect(typed('')).toHaveLength(6);
    expect(typed(' / ')[0]).toBe('85 old');
  });

  it('takes any text', () => {
    const takes = (text: string) => expect([lookUpTyped(finder, text), lookUpSpoken(finder, text)]).toHaveLength(2);
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => void takes(text)));
  });
});

describe('look-up by voice', () => {
  it('finds what is asked for in whole sentences', () => {
    expect(spoken('look up eighty-five')).toEqual(['85 old', '85 new']);
    expect(spoken('look up the eighty five on the old body')).toEqual(['85 old']);
    expect(spoken("what's the orrin thirty-five on m one")).toEqual(['35 old']);
    expect(spoken('find tessel at seventy millimetres')).toEqual(['tele', 'wide']);
    expect(spoken('one thirty-five')).toEqual(['135']);
    expect(spoken('f one point eight on M two')).toEqual(['85 new']);
  });

  it('lets words pass that the logbook does not know, and finds nothing when it knows none', () => {
    expect(spoken('look up my dear old eighty-five')).toEqual(['85 old']);
    expect(spoken('look up quagmire')).toEqual([]);
    expect(spoken('')).toEqual([]);
  });

  it('is answered in one sentence', () => {
    const { answer, line } = words('lookUp');
    expect(answer(lookUpSpoken(finder, 'eighty-five'))).toBe(
      'Orrin 85 f/1.8 on Velde M1, the old body, 85\u00a0mm at 4.25\u00a0m: plus 6, entered on 1\u00a0Jan\u00a02026. 1 more situation is on screen.',
    );
    expect(answer(lookUpSpoken(finder, 'thirty-five'))).toMatch(/: never measured\.$/);
    expect(answer([])).toBe('Nothing in the logbook fits.');
    expect(line(lookUpTyped(finder, '85 old')[0]!)).toBe('+6  Orrin 85 f/1.8 · Velde M1, the old body · 85\u00a0mm · 4.25\u00a0m');
  });
});

describe('number words', () => {
  const { inFigures } = numberWordsIn(ENGLISH_WRITTEN.numbers);
  it.each([
    ['eighty-five', '85'],
    ['one thirty-five', '135'],
    ['one oh five', '105'],
    ['two hundred', '200'],
    ['a hundred', '100'],
    ['one hundred and five', '105'],
    ['two hundred and fifty', '250'],
    ['twenty-four seventy', '24 70'],
    ['seventy two hundred', '70 200'],
    ['one point eight', '1.8'],
    ['two point eight', '2.8'],
    ['1 point 8', '1.8'],
    ['M one', 'm1'],
    ['f four', 'f4'],
    ['fifty', '50'],
    ['eighteen fifty five', '18 55'],
    ['four hundred', '400'],
    ['the 85', 'the 85'],
    ['point', 'point'],
    ['three point', '3 point'],
  ])('"%s" is written %s', (said, written) => {
    expect(inFigures(said)).toBe(written);
  });
});

describe('slips', () => {
  it('are counted against the best beginning of the word', () => {
    expect(slipsToBegin('orin', 'orrin', 1)).toBe(1);
    expect(slipsToBegin('tesesl', 'tessel', 1)).toBe(1);
    expect(slipsToBegin('vel', 'velde', 0)).toBe(0);
    expect(slipsToBegin('abcd', 'wxyz', 2)).toBeNull();
  });

  it('are as many as were made, or fewer', () => {
    const word = fc.stringMatching(/^[a-z]{5,12}$/);
    fc.assert(
      fc.property(word, fc.nat(11), fc.constantFrom('cut', 'put', 'swap', 'change'), (text, where, how) => {
        const at = where % (text.length - 1);
        const [head, tail] = [text.slice(0, at), text.slice(at)];
        const slipped = {
          cut: head + tail.slice(1),
          put: `${head}q${tail}`,
          swap: head + tail[1] + tail[0] + tail.slice(2),
          change: `${head}q${tail.slice(1)}`,
        };
        expect(slipsToBegin(slipped[how], text, 1)).toBeLessThanOrEqual(1);
        expect(slipsToBegin(slipped[how], text, 1)).not.toBeNull();
      }),
      { numRuns: 500 },
    );
  });
});
