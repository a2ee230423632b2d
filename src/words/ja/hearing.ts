// Japanese: the hearing check.
import type { HearingWords } from '../hearingWords.ts';
import { taught, vocabulary } from '../taught.ts';
import { NO_MICROPHONE } from './microphone.ts';
import { write } from './write.ts';

/** What begins a question to the logbook. */
const lookUp = (): string => vocabulary().question.openings[0];

export const words: HearingWords = {
  title: '聞き取りテスト',
  stays: '音声はこのコンピューター上で比べます。保存も送信もしません。',
  kept: '登録した言葉から残すのは音の特徴だけで、再生はできません。特徴はこのブラウザーに残り、バックアップを作成するとそこにも入ります。',
  room: {
    title: '部屋',
    level: '入力音量',
    listen: '聞き取り開始',
    toListen: 'ボタンを押すと、Sweepbookにマイクの使用を許可するか、ブラウザーが尋ねます。',
    refused: {
      ...NO_MICROPHONE,
      'not asked': 'マイクがまだ許可されていません。ボタンを押し、「許可」を選んでください。',
      blocked: 'Sweepbookのマイク使用がブロックされています。アドレスの横のアイコンから許可し、もう一度ボタンを押してください。',
    },
    stand: '作業する場所に立ち、言葉を1つ言ってください。',
    noSound: 'このブラウザーからはマイクの音を受け取れないため、ここでは言葉を登録できません。',
    gone: 'マイクが外れました。つないでから、もう一度ボタンを押してください。',
    muted: 'マイクがミュートされています。マイク本体かシステムの音の設定で、ミュートを解除してください。',
  },
  heard: {
    noWord: '音は聞こえましたが、登録した言葉ではありません。',
    word: (word) => `「${word}」と聞こえました。`,
    perhaps: (word) => `「${word}」かもしれません。測定中なら、聞き返します。`,
  },
  own: {
    title: '自分の言葉',
    about: (takes) => [
      `1語につき${write.number(takes)}回言います。`,
      '測定用の7語だけで始められます。登録しない言葉は、キー、ペダル、ポインターで代用できます。',
    ],
    learns: '正しかった言葉から学習することもできます。設定の「音声操作」でオンにしてください。',
    group: (left, of) => (left === of ? `この${write.number(of)}語を登録` : `残りの${write.number(left)}語を登録`),
    teach: (word) => `「${word}」を登録`,
    again: (word) => `「${word}」を登録し直す`,
    short: { teach: '登録', again: '再登録' },
    is: {
      notTaught: '未登録',
      taught: '登録済み',
      learned: (more) => `登録済み、学習${write.number(more)}回`,
    },
    forgetLearned: '学習を消し、登録は残す',
    learnedForgotten: '学習した内容を消しました。登録した言葉はすべて残っています。',
    erase: '登録をすべて消去',
    erased: '登録した言葉をすべて消去しました。',
    rooms: { sweep: '測定', walk: '準備ガイド', logbook: '記録帳', rest: 'その他' },
    of: (done, all) => (done === all ? `${write.number(all)}語すべて登録済み` : `${write.number(all)}語中${write.number(done)}語を登録済み`),
    groups: {
      sweep: { name: '測定', for: '最初の半押しから値の確定まで、測定に必要な言葉です。' },
      walk: {
        name: '準備ガイド',
        get for() {
          return `準備ガイドを進めます。「${taught('repeat')}」は、値の読み上げにも使えます。`;
        },
      },
      arrows: { name: '矢印', for: '合焦ランプの両脇に矢印が出るボディ用です。' },
      values: {
        name: '値と記録帳',
        get for() {
          return `「${taught('set')}、${vocabulary().signs.minus[0]}、1、2」で値を選び、「${lookUp()}、8、5」で記録帳を調べます。`;
        },
      },
      rest: { name: 'その他の言葉', for: '一時停止、スキップなど、測定中のそのほかの操作です。' },
      lenses: {
        name: '自分のレンズ',
        get for() {
          return `「${lookUp()}」に続けて名前を言うと、記録帳のレンズを調べます。`;
        },
      },
    },
  },
  lesson: {
    say: (word) => `「${word}」と言ってください`,
    takes: (done, of) => `${write.number(done)}/${write.number(of)}`,
    begin: '前後を静かにして、カメラの前で言うとおりに言ってください。',
    taught: (word) => `「${word}」を登録しました。`,
    allTaught: 'すべての言葉を登録しました。パネルに戻ってください。さらに登録できる言葉が下にあります。',
    stop: '中止',
  },
};
