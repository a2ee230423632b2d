// Japanese: the cautions of the bench. Laser classes are those of IEC 60825-1.
import type { Caution, Harm } from '../../optics/setUp/caution.ts';
import { flicker } from '../../optics/lamps.ts';
import type { CautionsWords } from '../cautionsWords.ts';
import { write } from './write.ts';

const HARM: Readonly<Record<Harm, string>> = {
  manual: 'カメラの説明書と、メーカーの保証条件に従ってください。ここでは、機材を開けたり内部を調整したりする必要はありません。',
  'heavy lens': '重いレンズは、レンズの三脚座で固定します。ねじを緩めたり締めたりする間は、レンズを支えてください。',
  leads: 'つまずいて機材を倒さないように、コードは壁沿いに這わせるか、テープで留めてください。',
  tripod: '三脚の脚をいっぱいに開きます。倒れそうなら、低い位置におもりを下げてください。',
  'hot lamps': '照明は熱くなります。紙、布、手から離し、動かす前に冷ましてください。',
  mirror: '太陽や照明の光を、鏡でレンズや目に入れないでください。反射像は、まずライブビューか横から探してください。',
  'edges of the mirror': '鏡の縁に注意し、落ちないように固定してください。',
  laser: 'レーザーはクラス1か2（IEC 60825-1）だけを使ってください。光線や反射光をのぞき込まず、ファインダーをのぞいている間は必ず消してください。',
  'laser on the sensor': 'レーザーの光線と反射光をレンズに入れないでください。センサーを傷めることがあります。',
};

export const words: CautionsWords = {
  title: '注意',
  takeCare: '注意。',
  caution,
};

function caution(one: Caution): string {
  switch (one.is) {
    case 'service':
      return '補正で直るのは、一定のずれだけです。補正範囲を超えるずれ、レンズの破損、片ぼけは、メーカーのサービスに相談してください。';
    case 'lamps on the mains': {
      const { hertz } = flicker(one.mains);
      return `${write.number(one.mains)}\u00a0Hzの商用電源の照明は、1秒間に${write.number(hertz)}回ちらつきます。合焦ランプがちらつくなら、ちらつかない照明を使い、写真は1/${hertz}秒以上で撮影してください。`;
    }
    case 'warm light':
      return '電球色の光では、自然光よりわずかに手前や奥にピントが合うことがあります。実際に撮影する光で測定してください。';
    default:
      return HARM[one.is];
  }
}
