// Japanese: what does not fit at the bench, and what to do about it.
import type { BenchFault, PlainFault } from '../../optics/fault.ts';
import { byUnit } from '../countryInUse.ts';
import { FROM } from './lengths.ts';
import { write } from './write.ts';

const PLAIN: Readonly<Record<PlainFault, string>> = {
  'no aperture': '絞りを、レンズやカメラの表示どおり2.8のように入力してください。0.7〜128の値です。',
  'no factor': 'コンバーターに刻まれた倍率を、1.4のように1〜3の範囲で入力してください。',
  'no focal length': '焦点距離を4〜2000\u00a0mmの範囲で入力してください。',
  'focal length unread': '焦点距離を85のようにミリメートルで入力してください。',
  get 'no distance'() {
    return byUnit({ m: '距離を0.05〜500\u00a0mの範囲で入力してください。', ft: '距離を0.17〜1640\u00a0ftの範囲で入力してください。' });
  },
  'no measured distance': '実測した距離を入力してください。',
  'no reach': '距離基準マークからレンズ先端までの長さを、1〜1000\u00a0mmの範囲で入力してください。',
  'no magnification': '撮影倍率（センサー上の大きさ÷実物の大きさ）を0.0002〜10の範囲で入力してください。等倍は1です。',
  'no length on the target': 'ターゲット上の長さを、基準目盛の100\u00a0mmのように、ミリメートルで入力してください。',
  'no pixels': 'その長さが原寸の写真で何画素にあたるか数えてください。10画素以上必要です。',
  'no pixels spanned': '基準目盛が原寸の写真で何画素にあたるか入力してください。',
  'no pixel pitch': '画素ピッチを0.5〜50マイクロメートルの範囲で入力してください。',
  'no width of a photograph': '原寸の写真の幅を、6000のように画素数で入力してください。',
  'no sensor width': 'センサーの幅を4〜100\u00a0mmの範囲で入力してください。',
  'no sensor height': 'センサーの高さを3〜100\u00a0mmの範囲で入力してください。',
  'no circle of confusion': '許容錯乱円を0.001〜0.2\u00a0mmの範囲で入力してください。一般的な値は0.03です。',
  'no area': 'センサー上のAFエリアの大きさを0.2〜30\u00a0mmの範囲で入力してください。一般的な値は2.5です。',
  'no step worth': '1ステップの移動量を、焦点深度の半分に対する比（0.01〜1）で入力してください。一般的な値は0.125です。',
  'no exposure': 'ターゲットに対してカメラが示すISO感度、絞り、シャッター速度を入力してください。',
  'no iso speed': 'ISO感度を、カメラの表示どおり400のように入力してください。',
  'no shutter': 'シャッター速度を、1秒未満なら1/125、秒単位なら2"のように入力してください。',
  'no light value': 'カメラのISO感度、絞り、シャッター速度を読み直してください。そのような明るさの部屋はありません。',
  'plenty below fine': '余裕のある明るさは、十分とする明るさより大きくしてください。',
  'no angle': '角度を\u221290〜90度の範囲で入力してください。',
  'no reflection': '原寸の写真で、反射像が中央から何画素ずれているか入力してください。',
  'no offset on the sensor': 'センサー上のずれをミリメートルで入力してください。',
  'offset beyond the picture': 'ずれが画面より大きくなっています。画面の中央から測り直してください。',
  'no spot': '光点が光源から何ミリメートルずれて戻るか入力してください。光源に戻れば0です。',
  'no sides': 'ライブビューでの4辺の長さを、すべて0より大きい値で入力してください。',
  'no rectangle': '長方形の幅と高さをミリメートルで入力してください。',
  'rectangle of nothing': '長方形の幅と高さを、ミリメートルで、0より大きい値で入力してください。',
  'tilt without a rig': '開放絞りと、測定環境で印の付いた項目を入力してください。傾きはそこから計算します。',
  'target too large': 'ターゲットが壁より大きくなります。ターゲットを近づけるか、AFエリアを小さくしてください。',
  'no drawn length': '基準目盛の設計上の長さがありません。',
  'no printed length': '印刷した基準目盛の長さを、100のようにミリメートルで入力してください。',
  'no ramp line': '最も鮮明な線の横の数字を、符号とともに入力してください。',
  'no ramp length': '傾斜スケールの長さをミリメートルで入力してください。',
  'no set-back': '傾斜スケールの上端が下端より何ミリメートル奥にあるか入力してください。',
  'set-back too large': '傾斜スケールの上端が下端よりどれだけ奥にあるか入力してください。0より大きく、傾斜スケールの長さより小さい値です。',
  'lean too steep or flat': '傾斜スケールの角度を10°〜80°にしてください。45°用に描かれています。',
  'no share': '被写体より手前に入る被写界深度の割合を、0〜100%で入力してください。',
  'depth without end': 'ここでは被写界深度の奥に限りがないため、手前の割合を計算できません。絞りを開けるか、近づいてください。',
  'share beyond the range': 'その割合に達する前に、補正範囲が尽きます。中間に近い割合にしてください。',
  'share without a rig': '被写界深度の手前の割合が指定されています。測定環境で開放絞りを入力すると、その割合になる値を表示します。',
  'no stored correction': '現在記憶されている補正値を、\u22123のように入力してください。',
  'no such correction': '補正値を\u22123のような整数で入力してください。',
  'no temperature': '温度を\u221250〜60°Cの範囲で入力してください。',
  'does not fit': '入力内容が正しくありません。確かめてください。',
};

export function benchFault(fault: BenchFault): string {
  switch (fault.is) {
    case 'distance unread':
      return fault.unit === 'm' ? '距離を1.75のようにメートルで入力してください。' : '距離を5.74のようにフィートで入力してください。';
    case 'distance out of range':
      return fault.unit === 'm' ? '距離を0.05〜500\u00a0mの範囲で入力してください。' : '距離を0.17〜1640\u00a0ftの範囲で入力してください。';
    case 'two lengths':
      return `「${fault.text}」は2通りの長さに読めます。${write.typedLength(fault.one)}か${write.typedLength(fault.other)}と書いてください。`;
    case 'two numbers':
      return `「${fault.text}」は2通りの数に読めます。${write.typed(fault.one)}か${write.typed(fault.other)}と書いてください。`;
    case 'focal length in another unit':
      return `焦点距離をミリメートルで入力してください。${write.typedLength(fault.typed)}は${write.number(fault.meant, 1)}です。`;
    case 'focal length in metres':
      return `${write.number(fault.typed, 3)}はメートルのようです。焦点距離をミリメートルで入力してください。この場合は${write.number(fault.meant)}です。`;
    case 'nearer than its closest focus':
      return `${write.distance(fault.wanted, fault.unit)}は、このレンズの最短撮影距離より近すぎます。ターゲットを、距離基準マークから${write.distance(fault.closest, fault.unit)}以上離してください。`;
    case 'no focus so near':
      return `通常の${write.number(fault.focalLength)}\u00a0mmレンズは、${FROM[fault.from]}から${write.distance(fault.distance, 'm')}ではピントが合いません。距離を測り直すか、ターゲットの基準目盛で撮影倍率を測ってください。`;
    case 'tilt too large':
      return `傾きが${write.number(fault.most)}°を超えます。4辺を測り直し、ターゲットの大きさと距離を確かめてください。`;
    case 'print misread':
      return `基準目盛を、両端の印の外側から外側まで、ミリメートルで測り直してください。約${write.number(fault.drawn)}になるはずです。`;
    default:
      return PLAIN[fault.is];
  }
}
