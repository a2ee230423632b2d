// Japanese: the help.
import type { HelpWords } from '../helpWords.ts';
import { taught, vocabulary } from '../taught.ts';

export const words: HelpWords = {
  title: 'ヘルプ',
  about:
    'パネルが値を示します。カメラをその値に合わせ、半押しの間ずっと合焦ランプを見て、見えたとおりに答えてください。' +
    'パネルは、ランプが安定する値の中心を求めます。',
  now: {
    title: '今できること',
    start: 'レンズを入力して開始',
    practice: '練習用カメラ',
    bench: '測定環境の準備',
    goOn: '測定を続ける',
    watch: '別のウィンドウの測定を見る',
  },
  lights: {
    title: 'ランプの意味',
    light: 'ランプ',
    counts: '扱い',
    is: {
      steady: { seen: 'すぐに点き、途切れない', counts: '域内' },
      late: { seen: '遅れて点く', counts: '域外、近い' },
      flicker: { seen: '一度でも消える', counts: '域外' },
      dark: { seen: '一度も点かない', counts: '域外、遠い' },
      untold: { seen: '不安定（種類は不明）', counts: '域外' },
    },
    note:
      '印の横の小さな三角は、ファインダーの矢印です。ランプが安定していても、矢印が片方だけなら域外に数えます。' +
      '安定と数えるのは、半押し時間が終わったときだけです。',
  },
  spoken: {
    title: '言葉とキー',
    say: '言葉',
    means: '意味',
    key: 'キー',
    get set() {
      return `${taught('set')}、${vocabulary().signs.plus[0]}6`;
    },
    meanings: {
      solid: 'ランプが安定していた',
      delayed: '遅れて点いた',
      flicker: 'ちらついた',
      nothing: '点かなかった',
      left: '左矢印',
      right: '右矢印',
      balanced: '矢印両方均等',
      lopsided: '矢印不均等',
      holding: '半押しを始める',
      undo: '直前の操作を取り消す',
      repeat: 'もう一度読み上げる',
      pause: '測定を一時停止する',
      resume: '測定を再開する',
      skip: 'この値をスキップする',
      accept: '示された結果を確定する',
      'go on': '終了せずに半押しを続ける',
      set: '自分で値を選ぶ',
      same: 'ピントは変わらない',
      shifted: 'ピントがずれた',
      finish: 'ここまでで測定を終える',
      help: '使える言葉を聞く',
      'far view': '大画面表示を切り替える',
      entered: '値を設定済みにする',
      next: '次のレンズ、または次の手順',
      back: '前の手順',
    },
    get together() {
      return `ランプと矢印は続けて言えます：「${taught('flicker')}、${taught('left')}」。`;
    },
  },
  presses: {
    title: 'スイッチ1つで操作',
    about: '大きなボタンがスイッチです。スペース、Enter、Page Down、Page Upのキーや、これらを送るペダルやリモコンもスイッチになります。',
    how: {
      short: '押す',
      double: 'すばやく2回押す',
      long: '0.5秒より長く押す',
      'kept, double': '長押しで半押しが始まったあと、すばやく2回押す',
    },
    when: {
      dialling: '値を合わせる間',
      holding: '半押し中',
      judging: '終了音のあと',
      offered: '結果が示されたとき',
      paused: '一時停止中',
      checking: 'ピントの確認を求められたとき',
      turning: 'ピントをずらすよう求められたとき',
      finished: '結果の画面',
    },
  },
  before: {
    title: '始める前に',
    steps: [
      'ターゲットをカメラに正対させ、むらなく照らしてください。',
      '絞り開放のライブビューで厳密にピントを合わせます。そのあとレンズをMFに切り替え、リングに触れないでください。',
      '背面ボタンでAFを行うボディでは、半押しの代わりにそのボタンを押し続けてください。',
    ],
    manual: 'カメラの説明書と異なる点は、説明書に従ってください。',
  },
};
