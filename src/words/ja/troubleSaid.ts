// Japanese: each trouble in one short sentence, said and shown when it is found.
import type { Trouble } from '../../sweep/trouble/trouble.ts';

export const TROUBLE_SAID: Readonly<Record<Trouble['trouble'], string>> = {
  'flickers everywhere': 'どの値でもランプがちらつきます。',
  'never lights': 'ランプがまったく点灯しません。',
  'lights everywhere': 'どの値でもランプが安定しています。',
  'hole in the band': '安定域に途切れがあります。',
  'arrows contradict the lights': '矢印とランプが食い違っています。',
  'focus moved': 'ピントが動きました。',
  'verdicts misjudged': 'ほかと合わない判定があります。',
  'band drifts': '安定域が動いています。',
  play: '値を合わせる向きで結果が変わります。',
};
