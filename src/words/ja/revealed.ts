// Japanese: what a practice camera really was.
import type { Oddity } from '../../sweep/oddity.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { RevealedFact } from '../resultWords.ts';
import { between } from './focusFell.ts';
import { write } from './write.ts';

const MADE: Readonly<Record<Oddity, string>> = {
  'flickers everywhere': 'この練習用カメラは、どの値でもちらつくように作られていました。',
  'never lights': 'この練習用カメラは、まったく点灯しないように作られていました。',
  'lights everywhere': 'この練習用カメラは、どの値でも点灯するように作られていました。',
  'hole in the band': 'この練習用カメラは、安定域の途中に途切れがあるように作られていました。',
  'arrows turn round': 'この練習用カメラは、測定中に矢印の向きが逆になるように作られていました。',
  'focus moves': 'この練習用カメラは、測定中にピントが動くように作られていました。',
};

export function factRevealed(fact: RevealedFact): string {
  switch (fact.is) {
    case 'held':
      return `この練習用カメラの安定域は${between(fact.low, fact.high)}、真の中心は${at((fact.low + fact.high) / 2)}です。`;
    case 'made wrong':
      return `${MADE[fact.how]}${fact.named ? '測定で見つかりました。' : '測定では、見つかるほど多く現れませんでした。'}`;
    case 'gap':
      return `安定域は${between(fact.low, fact.high)}で、${between(fact.from, fact.to)}では不安定です。`;
    case 'moved':
      return `安定域は、はじめは${between(fact.low, fact.high)}、ピントが動いたあとは${between(fact.low + fact.by, fact.high + fact.by)}でした。`;
    case 'value off':
      return `${writeSteps(fact.value)}の誤差は${steps(fact.off)}です。`;
    case 'centre off':
      return `求めた中心の誤差は${steps(fact.off)}です。`;
    case 'not found':
      return '測定では見つかりませんでした。';
  }
}

const at = (place: number): string => write.signed(place, 1);

const steps = (off: number): string => (off < 1 ? '1ステップ未満' : `${write.number(off, 1)}ステップ`);
