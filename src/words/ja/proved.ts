// Japanese: what photographs showed, in a line of the logbook and on paper.
import type { Proof } from '../../photographs/proof.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { ShownWords } from '../shownWords.ts';
import { between, correctionBetween, focusFell, lengthAtTarget } from './focusFell.ts';
import { write } from './write.ts';

const SHARP = { sharp: '鮮明', 'not sharp': '鮮明でない', 'not sure': '判断できず' } as const;
const VERDICT = { confirmed: '正しい', shifted: 'ずれあり', 'not enough': '判断できず' } as const;

/** What came out, in a word or two. */
function showed(proof: Proof): string {
  switch (proof.is) {
    case 'one':
      return SHARP[proof.sharp];
    case 'check':
      return `${writeSteps(proof.correction)}：${VERDICT[proof.verdict.is]}`;
    case 'bracket':
      return `中心${write.signed(proof.centre.value, 1)}`;
  }
}

/** By which pictures. */
function shownBy(proof: Proof): string {
  switch (proof.is) {
    case 'one':
      return '画像1枚';
    case 'check':
      return `${write.number(proof.shots)}枚の検証`;
    case 'bracket':
      return `${write.number(proof.shots.length)}枚のブラケット`;
  }
}

/** The figures, each a phrase of its own. */
function shownFacts(proof: Proof): readonly (string | false)[] {
  switch (proof.is) {
    case 'one':
      return [`ピント位置は${focusFell(proof.error)}`];
    case 'check':
      return [
        `ピント位置は${focusFell(proof.bias)}`,
        `ばらつき${lengthAtTarget(proof.repeatability)}`,
        proof.nearLessFar !== null && `近側からと遠側からの差${write.signed(proof.nearLessFar.value, 1)}\u00a0mm`,
        !proof.reference && 'ライブビューの基準なし',
      ];
    case 'bracket':
      return [
        `95%区間${between(proof.centre.low, proof.centre.high)}`,
        proof.joined?.is === 'agree' && `安定域の中心と一致、合わせて${correctionBetween(proof.joined.joint)}`,
        proof.joined?.is === 'differ' && `安定域の中心${write.signed(proof.joined.band.value, 1)}と不一致`,
        `1ステップの移動量${lengthAtTarget(proof.step.value)}`,
        `ばらつき${lengthAtTarget(proof.scatter)}`,
      ];
  }
}

export const shown: ShownWords = {
  showed: ({ proof }) => showed(proof),
  by: ({ proof, at }) => `${shownBy(proof)}、${write.day(proof.taken ?? at)}`,
  facts: ({ proof }) => line(shownFacts(proof)),
};
