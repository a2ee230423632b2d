// Contract of the Japanese words in the ways in which recognisers write them: none is taken for another, nor what denies it.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { JAPANESE } from '../../../../src/hearing/languages/ja/japanese.ts';
import { WORDS, type Word } from '../../../../src/sweep/inputs.ts';
import { hearingIn, isTold, shortly } from '../heard.ts';
import { MOMENTS, wordsAt } from '../moments.ts';

const { heard, questionIn, strictly } = hearingIn(JAPANESE);
const HOLDING = wordsAt('holding');
const say = (word: Word): string => JAPANESE.words[word].say;
const told = (text: string, allowed: readonly Word[]): string => shortly(heard(text, allowed));

test('what stands around a word without a blank changes nothing', () => {
  const before = fc.constantFrom('', 'えっと', 'えー、', 'はい、', 'すみません、', 'じゃあ', 'あの、', 'うーん', 'よし ', 'オーケー、', 'ごめん、');
  const after = fc.constantFrom('', 'です', 'お願いします', '、お願い', 'ですね', 'だよ', 'だね', 'でお願いします', '。', 'ー', 'と思います');
  fc.assert(
    fc.property(fc.constantFrom(...MOMENTS), fc.nat(), before, after, ({ words: allowed }, at, first, last) => {
      const words = allowed.filter(isTold);
      const word = words[at % words.length] ?? 'help';
      const said = `${first}${say(word)}${last}`;
      expect([said, told(said, allowed)]).toEqual([said, say(word)]);
    }),
    { numRuns: 200 },
  );
});

/** Of each word what recognisers may write for it: other characters, other forms, sounds that were misheard, words around it. */
const WRITTEN: Readonly<Partial<Record<Word, string>>> = {
  solid:
    '了解、バッチリ たぶんバッチリ 今のはバッチリ バッチリみたい ばっちりです バッチリだね ばちり バッチ利 ばっちりー はい、バッチリ バッチリでした パッチリ 安定です 安定しています ランプは安定 パチリ ばっちりついた',
  delayed:
    'やっぱり遅れ 遅れっぽい 遅れちゃった おぐれ 遅れです おくれ 送れ オクレ 遅れた ちょっと遅れた 遅れました お暮れ 遅れがあります 少し遅れ 遅れてます あ、遅れ 遅れたね 遅れ気味 ランプが遅れた',
  flicker:
    'チカチカっぽい シカシカ ちがちが ちかちかです チカチカしてる チカチカしました ちらつきます ちらついてます ちらちらしてる 地価地価 チカチカー 近近 ちらつきました 点滅しています',
  nothing:
    '点いてない 付きません 全くつかない 点かない つかないです 着かない 付かない ランプがつかない つかなかったです つきませんね 全然つかない ついてません つかないよ まだつかない',
  left: 'ひだり 左です ひだりー 左側です 左矢印です えー左 ひだりね 左だよ',
  right: 'みぎ 右です ミギ 右矢印 右側です 右だね みぎー',
  balanced: 'きんとう 均等です 両方均等です 近東 キントウ きんと 均等だね 金糖',
  lopsided: 'かたより 片寄り 偏ってます 偏りがある かたよっています 肩より 方より 偏りました',
  holding: 'スタートします すたーと はいスタート 開始します 半押し中 半押しします 半押しした スターと じゃあスタート では開始',
  undo: 'やっぱり取り消し あ、取り消し 取り消しましょう 取り消しです 取り消してください とりけし トリケシ 取消 今の取り消して 取り消しお願いします 鳥消し 取り消しします キャンセルして ごめん取り消し',
  repeat: 'もう一度お願いします もう一度言ってください もういちど もう1度お願い もう一回言って 繰り返してください すみませんもう一度 リピートして',
  pause: '坊主 じゃあポーズ ポーズして ぽーず 一時停止して 一時停止お願いします 休憩します 中断します ボーズ ポーズです',
  resume: '再開します 再開して さいかい 最下位 再会 再開してください サイカイ じゃあ再開',
  skip: 'すきぷ 飛ばそう スキップして 飛ばしてください すきっぷ スキップで スキップお願いします これはスキップ これ飛ばして とばして',
  accept: '確定します かくてい カクテイ 確定してください 確定でお願いします 決定します 決定で これで確定します 採用します 各停 はい確定 拡底',
  'go on': '続けてください 続けます つづける まだ続ける 継続します 続けてお願いします',
  same: '同じです おなじ 変わってません 変わらないです 変わっていません ズレてないです ずれていません そのままです 変化なしです オナジ ズレません',
  shifted: 'ずれた ズレました ずれてます ズレています ずれちゃった ピントがズレた ズレたみたい 少しズレた 動きました 図れた ズレたよ 擦れた',
  finish: '終了します しゅうりょう 修了 終わります 終わりです 終わりにします 終わりにして これで終了 終了してください もう終わり',
  help: 'へるぷ ヘルプお願いします ヘルプして 使い方を教えて ヘルプを見せて',
  entered: '入力しました 入力した 入力済みです にゅうりょく 入力完了 入れました カメラに設定しました 入力できました カメラに入力した',
  next: '次です 次お願いします 次に進んで つぎへ 次のレンズお願いします 次へ進みます',
  back: '戻ってください もどる 戻ります 一つ戻る 前に戻ります 前に戻ってください 前の手順に戻る',
  'far view': '大画面にして 大画面で だいがめん 拡大表示して 拡大表示にして',
};

test('what recognisers write for a word is right or asked back in 95 of 100, and never another', () => {
  const answers = WORDS.filter(isTold).flatMap((word) =>
    MOMENTS.filter(({ words }) => words.includes(word)).flatMap(({ words }) =>
      (WRITTEN[word] ?? '').split(' ').map((text) => ({ text, word: say(word), told: told(text, words) })),
    ),
  );
  expect(answers.filter(({ word, told: said }) => !['', word].includes(said) && !said.endsWith('?'))).toEqual([]);
  expect(answers.length).toBeGreaterThan(500);
  expect(answers.filter(({ told: said }) => said !== '').length / answers.length).toBeGreaterThan(0.95);
});

describe('a word of one kana, or one that was misheard by one kana,', () => {
  const KANA = [...'あいうえおかきくけこがぎぐげごさしすせそざじずぜぞたちつてとだでどなにぬねのはひふへほばびぶべぼぱぴぷぺぽまみむめもやゆよらりるれろわん'];

  test('is never taken for another light or arrow', () => {
    const wrong = HOLDING.filter(isTold).flatMap((word) => {
      const kana = JAPANESE.parted?.(say(word)).replace(/\s/g, '') ?? '';
      // At each place some of them, at the next place others.
      const misheard = [...kana].flatMap((_, at) =>
        ['', ...KANA.filter((__, of) => of % 3 === at % 3)].map((one) => kana.slice(0, at) + one + kana.slice(at + 1)),
      );
      return misheard.filter((text) => {
        const answer = told(text, HOLDING);
        return !['', say(word)].includes(answer) && !answer.endsWith('?');
      });
    });
    expect(wrong).toEqual([]);
  });
});

test.each(
  `遅れてない 遅れていません 遅れなし チカチカしてない ばっちりじゃない 安定してない 安定していません 左じゃない 右じゃなくて 偏ってない 点いた 点きました すぐついた 消えた 同じじゃない 取り消さないで
  スタートしないで 終了しないで 確定しません 再開しない 入力していません 左じゃなくて右 左かな右かな ひかり 不安`.split(/\s+/),
)('"%s" denies or doubts, or tells something else, and is never taken', (text) => {
  expect(MOMENTS.filter(({ words }) => heard(text, words).is === 'taken').map(({ name }) => name)).toEqual([]);
});

test('"変わってない" and "ズレてない" tell that nothing shifted, and "不安定" is no steady light', () => {
  for (const text of ['変わってない', 'ズレてない', 'ズレてません']) expect(told(text, wordsAt('checking'))).toBe('同じ');
  expect(told('不安定です', HOLDING)).toBe('チカチカ');
});

test('a light and its arrow in one breath are one verdict without a blank', () => {
  const verdict = { light: 'flicker', arrows: 'left' };
  for (const text of ['チカチカ左', '左チカチカ', 'チカチカ 左です', 'チカチカ、左']) {
    expect(heard(text, HOLDING)).toMatchObject({ is: 'taken', words: 'チカチカ 左', input: { told: 'verdict', verdict } });
  }
  expect(strictly('チカチカ左', HOLDING)).toMatchObject({ is: 'taken', input: { told: 'verdict', verdict } });
});

test('no text whatever makes it fail', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string({ maxLength: 40 }), fc.string({ unit: fc.constantFrom(...'あっんー々一十左右遅0+−、ゃアヴ光') })), (text) => {
      expect(['taken', 'unclear', 'ignored']).toContain(heard(text, WORDS).is);
      expect(() => questionIn(text)).not.toThrow();
    }),
  );
});
