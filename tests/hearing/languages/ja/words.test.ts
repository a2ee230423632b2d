// Contract of the Japanese words: each is taken wherever it makes sense, in the ways in which people say it and recognisers write it,
// and none is taken for another.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { HeardLanguage } from '../../../../src/hearing/languages/heardLanguage.ts';
import { JAPANESE } from '../../../../src/hearing/languages/ja/japanese.ts';
import { WORDS, type Word } from '../../../../src/sweep/inputs.ts';
import type { Phase } from '../../../../src/sweep/state.ts';
import { understood } from '../../../../src/sweep/understood.ts';
import { strictMatcherFor } from '../../../../src/voice/matching.ts';
import { matcherFor } from '../../../../src/voice/phonetic/match.ts';
import { inPhase } from '../../../sweep/staged.ts';
import { TALK } from './japaneseTalk.ts';

const { match, questionIn } = matcherFor(JAPANESE);
const strictly = strictMatcherFor(JAPANESE);
const WALK: readonly Word[] = ['next', 'back', 'repeat', 'far view', 'help'];
const RESULT: readonly Word[] = ['entered', 'next', 'undo', 'repeat', 'far view', 'help'];
const PHASES = ['dialling', 'holding', 'judging', 'offered', 'paused', 'checking', 'finished'] as const satisfies readonly Phase['name'][];
const MOMENTS: readonly (readonly Word[])[] = [...PHASES.map((phase) => understood(inPhase(phase)).words), WALK, RESULT];
const heard = (text: string, allowed: readonly Word[]) => match([{ text }], allowed, true);
const told = (text: string, allowed: readonly Word[]): string => {
  const found = heard(text, allowed);
  return found.is === 'ignored' ? 'ignored' : `${found.is} ${found.is === 'taken' ? found.words : (found.best?.words ?? '')}`;
};
const phrasesOf = ({ words }: HeardLanguage, word: Word): readonly string[] => [words[word].say, ...words[word].also];
const plainWords = WORDS.filter((word) => word !== 'set');

test.each(MOMENTS.map((allowed) => [allowed]))('of %j every phrase is taken as its word, also before sounds are asked', (allowed) => {
  for (const word of plainWords.filter((one) => allowed.includes(one))) {
    for (const said of phrasesOf(JAPANESE, word)) {
      expect([said, told(said, allowed)]).toEqual([said, `taken ${JAPANESE.words[word].say}`]);
      expect([said, strictly([{ text: said }], allowed, true)]).toMatchObject([said, { is: 'taken', words: JAPANESE.words[word].say }]);
    }
  }
});

test('nothing is taken before the person has stopped, as "ズレた" may become "ズレたことはない", and "遅れ" "遅れてない"', () => {
  for (const allowed of MOMENTS) {
    for (const word of allowed.filter((one) => one !== 'set')) {
      expect(match([{ text: JAPANESE.words[word].say }], allowed, false)).toEqual({ is: 'ignored' });
      expect(strictly([{ text: JAPANESE.words[word].say }], allowed, false)).toEqual({ is: 'ignored' });
    }
  }
});

test('courtesy and thinking around a word change nothing', () => {
  const before = fc.constantFrom('', 'えっと', 'えー、', 'はい、', 'すみません、', 'じゃあ', 'あの、', 'うーん', 'よし ', 'オーケー、', 'ごめん、');
  const after = fc.constantFrom('', 'です', 'お願いします', '、お願い', 'ですね', 'だよ', 'だね', 'でお願いします', '。', 'ー', 'と思います');
  fc.assert(
    fc.property(fc.constantFrom(...MOMENTS), fc.nat(), before, after, (allowed, at, first, last) => {
      const words = allowed.filter((word) => word !== 'set');
      const word = words[at % words.length] ?? 'help';
      const said = `${first}${JAPANESE.words[word].say}${last}`;
      expect([said, told(said, allowed)]).toEqual([said, `taken ${JAPANESE.words[word].say}`]);
    }),
    { numRuns: 400 },
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
  const answers = plainWords.flatMap((word) =>
    [...MOMENTS.filter((allowed) => allowed.includes(word)), WORDS].flatMap((allowed) =>
      (WRITTEN[word] ?? '').split(' ').map((text) => ({ text, word: JAPANESE.words[word].say, told: told(text, allowed) })),
    ),
  );
  expect(answers.filter(({ word, told: said }) => said.startsWith('taken') && said !== `taken ${word}`)).toEqual([]);
  const fine = answers.filter(({ told: said }) => said !== 'ignored');
  expect(answers.length).toBeGreaterThan(500);
  expect(fine.length / answers.length).toBeGreaterThan(0.95);
});

describe('a word of one kana, or one that was misheard by one kana,', () => {
  const KANA = [...'あいうえおかきくけこがぎぐげごさしすせそざじずぜぞたちつてとだでどなにぬねのはひふへほばびぶべぼぱぴぷぺぽまみむめもやゆよらりるれろわん'];

  test('is never taken for another light or arrow', () => {
    const allowed = understood(inPhase('holding')).words;
    for (const word of plainWords.filter((one) => allowed.includes(one))) {
      const kana = JAPANESE.parted?.(JAPANESE.words[word].say).replace(/\s/g, '') ?? '';
      const misheard = [...kana].flatMap((_, at) => ['', ...KANA].map((one) => kana.slice(0, at) + one + kana.slice(at + 1)));
      const wrong = misheard.filter(
        (text) => ![`taken ${JAPANESE.words[word].say}`, 'ignored'].includes(told(text, allowed)) && told(text, allowed).startsWith('taken'),
      );
      expect({ word, wrong }).toEqual({ word, wrong: [] });
    }
  });
});

test.each(
  `遅れてない 遅れていません 遅れなし チカチカしてない ばっちりじゃない 安定してない 安定していません 左じゃない 右じゃなくて 偏ってない 点いた 点きました すぐついた 消えた 同じじゃない 取り消さないで
  スタートしないで 終了しないで 確定しません 再開しない 入力していません 左じゃなくて右 左かな右かな ひかり 不安`.split(/\s+/),
)('"%s" denies or doubts, or tells something else, and is never taken', (text) => {
  for (const allowed of [...MOMENTS, WORDS]) expect([text, told(text, allowed)]).not.toEqual([text, expect.stringContaining('taken')]);
});

test('"変わってない" and "ズレてない" tell that nothing shifted, and "不安定" is no steady light', () => {
  const checking = understood(inPhase('checking')).words;
  for (const text of ['変わってない', 'ズレてない', 'ズレてません']) expect(told(text, checking)).toBe('taken 同じ');
  expect(told('不安定です', understood(inPhase('holding')).words)).toBe('taken チカチカ');
});

test('a light and its arrow in one breath are one verdict, in either order and without a blank', () => {
  const allowed = understood(inPhase('holding')).words;
  const verdict = { light: 'flicker', arrows: 'left' };
  for (const text of ['チカチカ左', '左チカチカ', 'チカチカ 左です', 'チカチカ、左']) {
    expect(heard(text, allowed)).toMatchObject({ is: 'taken', words: 'チカチカ 左', input: { told: 'verdict', verdict } });
  }
  expect(strictly([{ text: 'チカチカ左' }], allowed, true)).toMatchObject({ is: 'taken', input: { told: 'verdict', verdict } });
});

test('of what people say to each other nothing is acted on, and little is asked about, though many sentences hold a taught word', () => {
  expect(TALK.length).toBeGreaterThan(60);
  const answers = [...MOMENTS, WORDS].flatMap((allowed) => TALK.map((text) => ({ text, told: told(text, allowed) })));
  expect(answers.filter(({ told: said }) => said.startsWith('taken'))).toEqual([]);
  expect(answers.filter(({ told: said }) => said !== 'ignored').length / answers.length).toBeLessThan(0.06);
  expect(TALK.filter((text) => questionIn(text) !== null)).toEqual([]);
});

test('no text whatever makes it fail', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string({ maxLength: 40 }), fc.string({ unit: fc.constantFrom(...'あっんー々一十左右遅0+−、ゃアヴ光') })), (text) => {
      expect(['taken', 'unclear', 'ignored']).toContain(heard(text, WORDS).is);
      expect(() => questionIn(text)).not.toThrow();
    }),
  );
});
