// Japanese: what was ticked and read while a rig was set up.
import { writeSteps } from '../../sweep/scale.ts';
import type { BenchReading } from '../../optics/setUp/reading.ts';
import type { ReadingsWords } from '../readingsWords.ts';
import { FROM } from './lengths.ts';
import { write } from './write.ts';

export const words: ReadingsWords = {
  title: '準備の記録',
  ticked: (steps) => `${write.number(steps)}件の手順を確認済み`,
  reading,
};

function reading(one: BenchReading): string {
  switch (one.reads) {
    case 'old value':
      return `以前の補正値：${writeSteps(one.value)}`;
    case 'print':
      return `基準目盛：${write.number(one.measured, 1)}\u00a0mm（設計値${write.number(one.drawn)}\u00a0mm）`;
    case 'distance':
      return `距離：${FROM[one.from]}から${write.distance(one.distance)}`;
    case 'light':
      return `明るさ：EV\u00a0${write.number(one.ev, 1)}（ISO\u00a0100）`;
    case 'mirror':
      return `鏡による傾き：${write.degrees(one.tilt, 2)}`;
    case 'spot':
      return `光点による傾き：${write.degrees(one.tilt, 2)}`;
    case 'sides':
      return `4辺による傾き：${write.degrees(one.tilt, 1)}（±${write.degrees(2 * one.uncertainty, 1)}）`;
    case 'magnification':
      return `写真の基準目盛：${write.number(one.length, 1)}\u00a0mmが${write.number(one.pixels)}画素`;
    case 'temperature':
      return `温度：${write.unit(one.celsius, 'celsius')}`;
    case 'live view':
      return one.sharp ? 'ライブビューは鮮明だった' : 'ライブビューは鮮明でなかった';
    case 'placement':
      return `被写界深度の手前の割合：${write.percent(one.share)}`;
  }
}
