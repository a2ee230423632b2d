// Japanese: each step of the set-up walk as it is spoken, in one short sentence.
import { sayCorrection } from '../../hearing/languages/ja/sayCorrection.ts';
import { FROM } from './lengths.ts';
import type { Each } from '../setUpWords.ts';
import { write } from './write.ts';

export const SPOKEN: Each = {
  practice: () => '練習に準備は要りません。画面のランプを見てください。',
  'old value': () => '今の補正値を控えてください。',
  tripod: () => 'カメラを三脚に載せ、遠隔レリーズを使います。',
  converter: ({ factor }) => `${write.number(factor, 2)}倍のコンバーターを付けてください。`,
  zoom: ({ focalLength }) => `ズームを${write.number(focalLength)}ミリに合わせてください。`,
  target: () => 'ターゲットを平らに掛け、中心をレンズの高さにします。',
  print: () => '基準目盛を測ってください。',
  distance: ({ distance: length, from, unit }) => `ターゲットを${FROM[from]}から${write.distance(length, unit)}に置いてください。`,
  light: () => 'ターゲットをむらなく照らし、露出を読んでください。',
  square: ({ by }) =>
    ({
      mirror: '鏡でターゲットを正対させてください。',
      sides: '4辺を測り、ターゲットを正対させてください。',
      spot: '反射する光点で、ターゲットを正対させてください。',
    })[by],
  stabiliser: () => '手ぶれ補正を切ってください。',
  'centre point': () => '中央の測距点、シングルAFです。',
  aperture: ({ aperture }) => `絞り開放、F${write.number(aperture, 1)}です。`,
  'focus button': () => '半押しの代わりに、背面ボタンを使います。',
  temperature: () => '機材を室温になじませてください。',
  'start value': ({ start }) => `このレンズの補正をオンにし、${sayCorrection(start)}に合わせてください。`,
  'critical focus': ({ by }) => (by === 'live view' ? '最大倍率のライブビューでピントを合わせてください。' : '写真で、最も鮮明なピントを探してください。'),
  magnification: () => '基準目盛を撮影し、画素数を数えてください。',
  'hold focus': ({ at }) => (at === 'body' ? 'ボディをMFにし、リングから手を離します。' : 'レンズをMFにし、リングから手を離します。'),
  viewfinder: ({ leaves }) => (leaves === 'live view' ? 'ライブビューを終え、ファインダーをのぞいてください。' : 'ファインダーをのぞいてください。'),
};
