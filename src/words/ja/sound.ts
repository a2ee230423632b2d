// Japanese: the sound check, and what is so where nothing sounds or nothing is spoken.
import type { SoundWords } from '../soundWords.ts';
import { correctionSaid } from '../taught.ts';
import { write } from './write.ts';

const said = (): string => `「${correctionSaid(6)}」`;

const percent = (value: number): string => write.percent(value / 100);

export const words: SoundWords = {
  title: '音のテスト',
  offer: '音のテスト：合図音と読み上げを一度聞く',
  play: '合図音と値を再生',
  loudness: '音量',
  percent,
  loudnessAt: (value) => `音量：${percent(value)}`,
  playing: '上がる音で半押しが始まり、下がる音で終わります。そのあと値を読み上げます。',
  get heard() {
    return `2つの合図音と${said()}が聞こえましたか？聞こえなければ、コンピューターの音量を上げるか、別の出力先を選んでください。`;
  },
  done: '完了',
  tonesOnly: '2つの合図音が聞こえましたか？読み上げはオフなので、値は表示だけです。',
  get speechOnly() {
    return `${said()}と聞こえましたか？合図音はオフなので、半押しの開始と終了に音はありません。`;
  },
  standsStill: 'このコンピューターは音を再生していません。スピーカーかヘッドホンをつないでください。それまでは、すべて画面に表示します。',
  mute: (language) =>
    `このコンピューターにはブラウザーで使える${language}の音声がないため、表示と合図音だけで、読み上げはありません。` +
    '読み上げるには、システムの音声設定で音声を追加してください。',
  off: '合図音も読み上げもオフです。半押しの開始と終了は、画面だけで分かります。',
  switchOn: '両方オンにする',
};
