// Japanese: what follows at the bench from what was measured there.
import type { BenchDistance } from '../../optics/distance.ts';
import type { Edge, Finer, Tilt } from '../../optics/fourSides.ts';
import type { LightVerdict } from '../../optics/light.ts';
import type { StepSize } from '../../photographs/focusError.ts';
import type { BenchWords } from '../benchWords.ts';
import { nearTarget } from './lengths.ts';
import { write } from './write.ts';
import { millimetres, type Millimetres } from '../../units.ts';

const GOOD_FOR: Readonly<Record<BenchDistance['stands'], (least: string) => string>> = {
  usual: () => '一般的な用途に向く距離です。',
  short: () => '短めですが、使えます。遠くも撮るレンズなら、もっと離れた距離でも測定してください。',
  near: (least) => `値は近距離撮影だけに合います。一般的な用途には、${least}以上離れてください。`,
  far: () => 'そのくらい遠くを撮るレンズなら適切です。ターゲットを大きく、照明を明るくしてください。',
  'at closest focus': () => 'レンズの最短撮影距離です。値は近距離撮影に合い、遠くでは異なることがあります。',
};

export const stands: BenchWords['distance']['stands'] = (at, least, unit) =>
  `撮像面から${write.distance(at.distance, unit)}、焦点距離の${write.number(at.multiple, at.multiple < 10 ? 1 : 0)}倍です。${GOOD_FOR[at.stands](write.distance(least, unit))}`;

const ENOUGH: Readonly<Record<LightVerdict, string>> = {
  'too dim': '位相差AFには暗すぎます。照明を足すか近づけて、カメラの値を読み直してください。',
  fine: '十分な明るさです。',
  plenty: '余裕のある明るさです。',
};

export const lightFound: BenchWords['light']['verdict'] = ({ ev, onGrey, onPaper, verdict, flickers }) => {
  const light = `EV\u00a0${write.number(ev, 1)}（ISO\u00a0100）。測光したのが中間グレーなら約${write.number(onGrey)}\u00a0lx、白い紙なら約${write.number(onPaper)}\u00a0lxです。${ENOUGH[verdict]}`;
  return flickers === null
    ? light
    : `${light}このシャッター速度では、照明のちらつきで写真ごとに露出が変わります。1/${2 * flickers}秒か、その整数倍にしてください。`;
};

const COST = (steps: number): string => (steps < 0.1 ? '影響は1ステップよりはるかに小さい' : `影響はAFエリアの端で約${write.number(steps, 1)}ステップ`);
const TURN_UNTIL = {
  mirror: 'レンズの反射像が画面の中央に近づくまで、ターゲットの向きを変えてください。',
  spot: '光点が光源の近くに戻るまで、ターゲットの向きを変えてください。',
};

export const tilted: BenchWords['square']['tilted'] = (by, tilt, steps, square) =>
  `傾き${write.degrees(tilt, 2)}、${COST(steps)}です。${square ? '十分に正対しています。' : TURN_UNTIL[by]}`;

const EDGE: Readonly<Record<Edge, string>> = { left: '左端', right: '右端', top: '上端', bottom: '下端' };

function finer(how: Finer): string {
  switch (how.by) {
    case 'marks':
      return `縦横とも${write.millimetres(how.apart)}以上離れた印を板の上で測るか、鏡を使ってください。`;
    case 'a larger rectangle':
      return 'もっと大きな長方形を測るか、鏡を使ってください。';
    case 'the mirror alone':
      return 'この画面には、長さを0.5%で読んでも足りる大きさの長方形が入りません。鏡を使ってください。';
  }
}

const tiltBySides = (tilt: Tilt): string => `傾き${write.degrees(tilt.whole, 1)}（±${write.degrees(2 * tilt.uncertainty, 1)}）です。`;

export const bySides: BenchWords['square']['bySides'] = (tilt, allowed, found) => {
  switch (found.verdict) {
    case 'square':
      return `${tiltBySides(tilt)}十分に正対しています。`;
    case 'turn':
      return `${tiltBySides(tilt)}ターゲットの${write.list(found.away.map((edge) => EDGE[edge]))}がカメラから遠ざかるように、向きを変えてください。`;
    case 'cannot tell':
      return `${tiltBySides(tilt)}${write.degrees(allowed, 1)}を判断するには粗すぎます。${finer(found.finer)}`;
  }
};

export const STEP_FROM: Readonly<Record<StepSize['from'], string>> = {
  estimate: 'これは推定値です。',
  bracket: '写真のブラケットによる実測値です。',
};

export const focus: BenchWords['place']['focus'] = (error, unit, worth) => {
  const off: Millimetres = millimetres(Math.abs(error));
  const where = `ピントはターゲットの${error < 0 ? '手前' : '奥'}${nearTarget(off, unit)}にあります`;
  return worth === null
    ? `${where}。`
    : `${where}。その側の被写界深度の${write.percent(worth.share)}、約${write.number(worth.steps, 1)}ステップ分です。${STEP_FROM[worth.by]}`;
};
