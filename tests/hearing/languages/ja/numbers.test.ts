// Contract of Japanese numbers, where they differ from other languages: in characters, in kana and in wide figures, with particles and verbs
// around them, without blanks.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { JAPANESE } from '../../../../src/hearing/languages/ja/japanese.ts';
import { sayCorrection, sayNumber } from '../../../../src/hearing/languages/ja/sayCorrection.ts';
import { USUAL_LIMITS } from '../../../../src/logbook/due.ts';
import { finderOf, lookUpSpoken } from '../../../../src/logbook/search/finder.ts';
import { numberWordsIn } from '../../../../src/logbook/search/numberWords.ts';
import { shelfOf } from '../../../../src/logbook/shelf.ts';
import { asName, nameAfterNextIn } from '../../../../src/voice/nextLens.ts';
import { spelledQuestions, wholeQuestion } from '../../../../src/voice/ownWords/spelledQuestion.ts';
import { spelledValues, type WordByWord } from '../../../../src/voice/ownWords/spelledValue.ts';
import { libraryWith, T0 } from '../../../logbook/libraryWith.ts';
import { hearingIn, shortly } from '../heard.ts';
import { wordsAt } from '../moments.ts';

const { heard: heardAmong, questionIn, correction } = hearingIn(JAPANESE);
const DIALLING = wordsAt('dialling');
const heard = (text: string, largest = 20) => heardAmong(text, DIALLING, largest);
const { say } = JAPANESE.numbers;

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
  (value) => `${value < 0 ? '−' : '+'}${wide(Math.abs(value))}`,
  (value) => `${value < 0 ? 'ー' : '+'}${Math.abs(value)}`,
  (value) => `セット${value < 0 ? '-' : '+'}${Math.abs(value)}`,
  (value) => `${signOf(value)}${inCharacters(Math.abs(value))}`,
  (value) => `セット、${signOf(value)}${inCharacters(Math.abs(value))}です`,
  (value) => `${signOf(value)}${say(Math.abs(value))}`,
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

  test('is read back as itself, every way of writing it', () => {
    const taken = (value: number): string => `セット ${value < 0 ? '\u2212' : '+'}${Math.abs(value)}`;
    const texts = values
      .filter((one) => one !== 0)
      .flatMap((value) => FORMS.filter((_, at) => (at + value) % 3 === 0).map((form) => ({ value, text: form(value) })));
    expect(texts.filter(({ value, text }) => shortly(heard(text, 50)) !== taken(value))).toEqual([]);
  });

  test('is not read where it is none', () => {
    expect(['プラス4.5', 'プラス', '12', 'マイナス五十二百', 'なな'].map(correction)).toEqual([null, null, null, null, null]);
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

  test('from 8 to 800 mm is asked for in characters, in wide figures and by a verb behind it', () => {
    const asked = (text: string): string | undefined => inFigures(questionIn(text) ?? '').split(' ')[0];
    // Which number it is makes no difference to a question: of the long ones some are enough.
    const lengths = Array.from({ length: 793 }, (_, at) => at + 8).filter((length) => length <= 100 || length % 9 === 0);
    const missed = lengths.flatMap((length) =>
      [wide(length), inCharacters(length), say(length)]
        .flatMap((said) => [`検索${said}`, `${said}ミリを検索`, `${said}ミリの値は`])
        .filter((text) => asked(text) !== String(length)),
    );
    expect(missed).toEqual([]);
  });

  test('up to 1999 has one way of saying it', () => {
    expect(new Set(Array.from({ length: 2000 }, (_, whole) => say(whole))).size).toBe(2000);
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
