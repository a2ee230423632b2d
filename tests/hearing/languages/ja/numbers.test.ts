// Contract of Japanese numbers: a correction is read in figures, in characters and in kana, with what people say around it; a length in
// every way of saying it.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { JAPANESE } from '../../../../src/hearing/languages/ja/japanese.ts';
import { sayCorrection, sayNumber } from '../../../../src/hearing/languages/ja/sayCorrection.ts';
import { USUAL_LIMITS } from '../../../../src/logbook/due.ts';
import { finderOf, lookUpSpoken } from '../../../../src/logbook/search/finder.ts';
import { numberWordsIn } from '../../../../src/logbook/search/numberWords.ts';
import { shelfOf } from '../../../../src/logbook/shelf.ts';
import { understood } from '../../../../src/sweep/understood.ts';
import { correctionsIn } from '../../../../src/voice/corrections.ts';
import { asName, nameAfterNextIn } from '../../../../src/voice/nextLens.ts';
import { spelledQuestions, wholeQuestion } from '../../../../src/voice/ownWords/spelledQuestion.ts';
import { spelledValues, type WordByWord } from '../../../../src/voice/ownWords/spelledValue.ts';
import { matcherFor } from '../../../../src/voice/phonetic/match.ts';
import { libraryWith, T0 } from '../../../logbook/libraryWith.ts';
import { inPhase } from '../../../sweep/staged.ts';

const { match, questionIn } = matcherFor(JAPANESE);
const { wordsOf, correctionIn } = correctionsIn(JAPANESE);
const DIALLING = understood(inPhase('dialling')).words;
const heard = (text: string, largest = 20) => match([{ text }], DIALLING, true, largest);
const { say, also } = JAPANESE.numbers;

/** "二十一". */
function inCharacters(whole: number): string {
  const digits = '〇一二三四五六七八九';
  const places: [number, string][] = [
    [100, '百'],
    [10, '十'],
  ];
  let [rest, written] = [whole, ''];
  for (const [size, place] of places) {
    const count = Math.floor(rest / size);
    if (count > 0) written += (count > 1 ? digits[count] : '') + place;
    rest %= size;
  }
  return rest > 0 || whole === 0 ? written + digits[rest] : written;
}

const signOf = (value: number): string => (value < 0 ? 'マイナス' : 'プラス');
const wide = (whole: number): string => String(whole).replace(/\d/g, (digit) => String.fromCharCode(digit.charCodeAt(0) + 0xfee0));
const digitsOf = (whole: number): string[] => [...String(whole)].map((digit) => say(Number(digit)));

const FORMS: readonly ((value: number) => string)[] = [
  sayCorrection,
  (value) => `セット${sayCorrection(value)}`,
  (value) => `${value < 0 ? '-' : '+'}${Math.abs(value)}`,
  (value) => `${value < 0 ? '−' : '+'}${wide(Math.abs(value))}`,
  (value) => `${value < 0 ? 'ー' : '+'}${Math.abs(value)}`,
  (value) => `セット${value < 0 ? '-' : '+'}${Math.abs(value)}`,
  (value) => `${signOf(value)}${inCharacters(Math.abs(value))}`,
  (value) => `セット、${signOf(value)}${inCharacters(Math.abs(value))}です`,
  (value) => `${signOf(value)}${say(Math.abs(value))}`,
  (value) => `${signOf(value)} ${say(Math.abs(value))}`,
  (value) => `${signOf(value)} ${digitsOf(Math.abs(value)).join(' ')}`,
  (value) => `${signOf(value)}${digitsOf(Math.abs(value)).join('')}`,
  (value) => `${signOf(value)}${Math.abs(value)}にセット`,
  (value) => `${signOf(value)}${Math.abs(value)}にしてください`,
  (value) => `${signOf(value)}${Math.abs(value)}に合わせて`,
  (value) => `${signOf(value)}の${Math.abs(value)}`,
  (value) => `${signOf(value)}側に${Math.abs(value)}`,
  (value) => `補正値を${signOf(value)}${Math.abs(value)}に`,
  (value) => `えーと、${signOf(value)}${Math.abs(value)}、お願いします`,
  (value) => `設定 ${signOf(value)}${Math.abs(value)}ステップ`,
];

describe('a correction', () => {
  const values = Array.from({ length: 101 }, (_, at) => at - 50);

  test('is read back as itself, every way of saying and writing it', () => {
    for (const value of values.filter((one) => one !== 0)) {
      for (const form of FORMS) expect([form(value), heard(form(value), 50)]).toMatchObject([form(value), { is: 'taken', input: { told: 'set', value } }]);
      for (const other of also(Math.abs(value))) {
        expect([other, heard(signOf(value) + other, 50)]).toMatchObject([other, { is: 'taken', input: { told: 'set', value } }]);
      }
    }
  });

  test('is read strictly as it is said', () => {
    for (const value of values) expect([value, correctionIn(wordsOf(sayCorrection(value)))]).toEqual([value, value]);
    expect(['プラス4.5', 'プラス', '12', 'マイナス五十二百', 'なな'].map((text) => correctionIn(wordsOf(text)))).toEqual([null, null, null, null, null]);
  });

  test.each(['セットゼロ', 'セット0', 'セット零', 'ゼロにセット', 'プラスゼロ', 'マイナス0', '値はゼロ'])(
    '"%s" is zero or asked about, and no other',
    (text) => {
      const found = heard(text);
      expect([text, found.is === 'ignored' || (found.is === 'unclear' && found.best === null) ? 0 : found]).toSatisfy(
        ([, one]: [string, 0 | { input?: { value: number }; best?: { input: { value: number } } }]) => one === 0 || (one.input ?? one.best?.input)?.value === 0,
      );
    },
  );

  test('is zero where zero is set', () => {
    expect(heard('セットゼロ')).toMatchObject({ is: 'taken', input: { told: 'set', value: 0 } });
    expect(heard('マイナス0')).toMatchObject({ is: 'taken', input: { told: 'set', value: 0 } });
  });

  test.each([
    ['プラス語', 5],
    ['マイナス苦', -9],
    ['プラス位置', 1],
    ['マイナス鉢', -8],
    ['プラス級', 9],
    ['マイナス産', -3],
    ['プラス録', 6],
    ['plus 5', 5],
    ['プラスしち', 7],
  ])('"%s" is written for %i', (text, value) => {
    expect(heard(text)).toMatchObject({ is: 'taken', input: { told: 'set', value } });
  });

  test.each(['セット7', '七にセット', '7にして', '五', 'にじゅう'])('whose sign was not heard is never taken: "%s"', (text) => {
    expect(heard(text).is).not.toBe('taken');
  });

  test.each(['じゅうな', 'じゅうはい', 'じゅうさ', 'あじゅう', 'じゅうん', 'じゅうにん', 'くな', 'ごん'])(
    'whose number is not whole is not taken for a shorter one: "プラス%s"',
    (said) => {
      expect(heard(`プラス${said}`).is).not.toBe('taken');
    },
  );

  test('misheard by one kana never changes its sign', () => {
    const kana = fc.constantFrom(...'あいうえおかきくけこさしすせそたちつてとなにぬねのはひふへほまみむめもらりるれろん');
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), fc.boolean(), fc.nat(3), kana, (size, negative, at, other) => {
        const sign = negative ? 'まいなす' : 'ぷらす';
        const found = heard(sign.slice(0, at) + other + sign.slice(at + 1) + say(size));
        expect(found.is === 'taken' && found.input.told === 'set' ? Math.sign(found.input.value) : 0).not.toBe(negative ? 1 : -1);
      }),
      { numRuns: 400 },
    );
  });

  test('is said in figures with its sign, halves as decimals', () => {
    expect([6, -12, 0, 4.5, -0.5, 120].map(sayCorrection)).toEqual(['プラス6', 'マイナス12', 'ゼロ', 'プラス4.5', 'マイナス0.5', 'プラス120']);
    expect([0, 3, 2.25].map(sayNumber)).toEqual(['ゼロ', '3', '2.5']);
  });

  test('may be told in single taught words', () => {
    const { spelt, wholeText } = spelledValues(JAPANESE);
    const whole = ['セット', 'マイナス', 'いち', 'に'].reduce<WordByWord | null>((before, word, at) => spelt(before, word, at), null);
    expect(heard((whole && wholeText(whole, 9)) ?? '')).toMatchObject({ is: 'taken', input: { told: 'set', value: -12 } });
  });
});

describe('a length', () => {
  const { inFigures } = numberWordsIn(JAPANESE.numbers);

  test('from 8 to 800 mm is asked for in every way of saying it', () => {
    for (let length = 8; length <= 800; length++) {
      const inKana = [say(length), ...also(length)].filter((said) => said.length > 1);
      for (const said of [String(length), wide(length), inCharacters(length), ...inKana]) {
        for (const text of [`検索${said}`, `${said}ミリを検索`, `${said}ミリの値は`]) {
          expect([text, inFigures(questionIn(text) ?? '').split(' ')[0]]).toEqual([text, String(length)]);
        }
      }
    }
  });

  test('up to 1999 has one way of saying it, and other ways that are the same', () => {
    const seen = new Set(Array.from({ length: 2000 }, (_, whole) => say(whole)));
    expect(seen.size).toBe(2000);
    for (let whole = 0; whole < 2000; whole++) for (const said of [say(whole), ...also(whole)]) expect(inFigures(said)).toBe(String(whole));
    expect([21, 300, 600, 800, 1999].map(say)).toEqual(['にじゅういち', 'さんびゃく', 'ろっぴゃく', 'はっぴゃく', 'せんきゅうひゃくきゅうじゅうきゅう']);
  });

  test.each([
    ['検索 24-70', '24 70'],
    ['七十二百を検索', '70 200'],
    ['70-200ミリを調べて', '70 200 みり'],
    ['検索いってんはち', '1.8'],
    ['1.4を調べて', '1.4'],
  ])('"%s" asks for %s', (text, figures) => {
    expect(inFigures(questionIn(text) ?? '')).toBe(figures);
  });
});

describe('the logbook', () => {
  const library = libraryWith({
    bodies: [{ id: 'a', name: 'Velde M1' }],
    lenses: [
      { id: '85', name: 'オリン 85' },
      { id: '135', name: 'Orrin 135' },
      { id: '50', name: '標準レンズ 50' },
    ],
    situations: [
      { id: 'x', body: 'a', lens: '85' },
      { id: 'y', body: 'a', lens: '135', focalLength: 135 },
      { id: 'z', body: 'a', lens: '50', focalLength: 50 },
    ],
  });
  const finder = finderOf(JAPANESE, library.kit, shelfOf(library, { at: T0, temperature: null }, USUAL_LIMITS));
  const names = library.kit.lenses.map(({ name }) => name);
  const found = (text: string) => lookUpSpoken(finder, questionIn(text, names) ?? '').map(({ subject }) => subject.situation);

  test.each([
    ['検索135', ['y']],
    ['検索 百三十五ミリ', ['y']],
    ['オリンを調べて', ['x']],
    ['おりんの値は', ['x']],
    ['検索、いち さん ご', ['y']],
    ['標準レンズを検索して', ['z']],
    ['50ミリはいくつだっけ', ['z']],
    ['えっと、135ミリを検索お願いします', ['y']],
  ])('is asked by "%s"', (text, situations) => {
    expect(found(text)).toEqual(situations);
  });

  test('may be asked in single taught words, and is not by other talk', () => {
    const { asked } = spelledQuestions(JAPANESE);
    const whole = ['検索', 'はち', 'ご'].reduce<WordByWord | null>((before, word, at) => asked(before, word, at, []), null);
    expect(whole && questionIn(wholeQuestion(whole, 9) ?? '')).toBe('はち ご');
    expect(['確認して', '値は', '教えて', 'ちょっと調べて', '85ミリお願いします'].map((text) => questionIn(text))).toEqual([null, null, null, null, null]);
    expect(questionIn('検索')).toBe('');
  });

  test('the next lens is named behind it, with or without a particle', () => {
    const name = nameAfterNextIn(JAPANESE.naming);
    expect(['次のレンズはコルビッド85', '次のレンズ、オリン', '次のレンズ Orrin 135'].map((text) => asName(name(text) ?? ''))).toEqual([
      'コルビッド85',
      'オリン',
      'Orrin 135',
    ]);
    expect(['次のレンズ', '次のレンズは', '次のレンズお願いします', '次へ', '次のレンズへ'].map(name)).toEqual([null, null, null, null, null]);
  });
});
