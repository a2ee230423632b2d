// Japanese: screens without content.
import type { EmptyWords } from '../emptyWords.ts';

const STATIONS = '図：三脚の位置が3つ並び、1つ目は済み、2つ目が次です。';

export const words: EmptyWords = {
  logbook: {
    sentence: '測定が終わると、レンズごとに、設定する値、安定域、中心がここに並びます。',
    drawn: '図：2本のレンズと、それぞれの値、補正範囲の中の安定域。',
    begin: 'レンズから始める',
  },
  plan: {
    sentence: '計画は機材から作ります。測定するものを、三脚を動かす回数が最も少ない順に並べます。',
    drawn: STATIONS,
    begin: '機材へ',
  },
  planned: {
    sentence: '測定するものを選ぶと、三脚の移動と機材の交換が最も少ない順に並べます。',
    drawn: STATIONS,
  },
  kit: {
    sentence: 'ボディとレンズがここに並びます。どの値も、それぞれの機材とともに保存されます。',
    drawn: '図：カメラのボディと、それに合うレンズ。',
    begin: 'ボディを追加',
  },
  photographs: {
    sentence: '印刷したターゲットを、絞り開放、シャープネスなしのAFで撮影し、画像をここに取り込みます。',
    drawn: '図：ターゲットと傾斜スケールの画像と、ピントの位置を示す線。',
  },
  files: {
    sentence: '機材と記録帳をファイルに保存し、ファイルから戻すことができます。',
    drawn: '図：ファイルと記録帳の間に、両方向の矢印。',
  },
};
