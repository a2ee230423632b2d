// English: what photographs showed, in a line of the logbook and on paper.
import type { Proof } from '../../photographs/proof.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { ShownWords } from '../shownWords.ts';
import { correctionBetween, focusFell, lengthAtTarget } from './focusFell.ts';
import { write } from './write.ts';

const SHARP = { sharp: 'sharp', 'not sharp': 'not sharp', 'not sure': 'not sure' } as const;
const VERDICT = { confirmed: 'confirmed', shifted: 'shifted', 'not enough': 'not sure' } as const;

/** What came out, in a word or two. */
function showed(proof: Proof): string {
  switch (proof.is) {
    case 'one':
      return SHARP[proof.sharp];
    case 'check':
      return `${writeSteps(proof.correction)} ${VERDICT[proof.verdict.is]}`;
    case 'bracket':
      return `centre ${write.signed(proof.centre.value, 1)}`;
  }
}

/** By which pictures. */
function shownBy(proof: Proof): string {
  switch (proof.is) {
    case 'one':
      return 'in one picture';
    case 'check':
      return write.count(proof.shots, { one: 'in a check with # shot', other: 'in a check with # shots' });
    case 'bracket':
      return write.count(proof.shots.length, { one: 'in a bracket of # shot', other: 'in a bracket of # shots' });
  }
}

/** The figures, each a phrase of its own. */
function shownFacts(proof: Proof): readonly (string | false)[] {
  switch (proof.is) {
    case 'one':
      return [`focus fell ${focusFell(proof.error)}`];
    case 'check':
      return [
        `focus falls ${focusFell(proof.bias)}`,
        `shots scatter by ${lengthAtTarget(proof.repeatability)}`,
        proof.nearLessFar !== null && `near less far ${write.signed(proof.nearLessFar.value, 1)}\u00a0mm`,
        !proof.reference && 'without a shot in live view',
      ];
    case 'bracket':
      return [
        `95% between ${write.signed(proof.centre.low, 1)} and ${write.signed(proof.centre.high, 1)}`,
        proof.joined?.is === 'agree' && `agrees with the band’s centre, together ${correctionBetween(proof.joined.joint)}`,
        proof.joined?.is === 'differ' && `differs from the band’s centre, ${write.signed(proof.joined.band.value, 1)}`,
        `one step moves focus by ${lengthAtTarget(proof.step.value)}`,
        `shots scatter by ${lengthAtTarget(proof.scatter)}`,
      ];
  }
}

export const shown: ShownWords = {
  showed: ({ proof }) => showed(proof),
  by: ({ proof, at }) => `${shownBy(proof)}, ${write.day(proof.taken ?? at)}`,
  facts: ({ proof }) => line(shownFacts(proof)),
};
