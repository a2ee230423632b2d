// French: what photographs showed, in a line of the logbook and on paper.
import type { Proof } from '../../photographs/proof.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { ShownWords } from '../shownWords.ts';
import { correctionBetween, focusFell, lengthAtTarget } from './focusFell.ts';
import { write } from './write.ts';

const SHARP = { sharp: 'net', 'not sharp': 'pas net', 'not sure': 'incertain' } as const;
const VERDICT = { confirmed: 'confirmé', shifted: 'décalé', 'not enough': 'incertain' } as const;

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
      return 'sur une image';
    case 'check':
      return write.count(proof.shots, { one: 'par un contrôle de # vue', other: 'par un contrôle de # vues' });
    case 'bracket':
      return write.count(proof.shots.length, { one: 'par une fourchette de # vue', other: 'par une fourchette de # vues' });
  }
}

/** The figures, each a phrase of its own. */
function shownFacts(proof: Proof): readonly (string | false)[] {
  switch (proof.is) {
    case 'one':
      return [`point tombé ${focusFell(proof.error)}`];
    case 'check':
      return [
        `le point tombe ${focusFell(proof.bias)}`,
        `dispersion des vues ${lengthAtTarget(proof.repeatability)}`,
        proof.nearLessFar !== null && `près moins loin ${write.signed(proof.nearLessFar.value, 1)} mm`,
        !proof.reference && 'sans vue en visée écran',
      ];
    case 'bracket':
      return [
        `${write.percent(0.95)} entre ${write.signed(proof.centre.low, 1)} et ${write.signed(proof.centre.high, 1)}`,
        proof.joined?.is === 'agree' && `concorde avec le centre de la bande, ensemble ${correctionBetween(proof.joined.joint)}`,
        proof.joined?.is === 'differ' && `diffère du centre de la bande, ${write.signed(proof.joined.band.value, 1)}`,
        `un pas déplace le point de ${lengthAtTarget(proof.step.value)}`,
        `dispersion des vues ${lengthAtTarget(proof.scatter)}`,
      ];
  }
}

export const shown: ShownWords = {
  showed: ({ proof }) => showed(proof),
  by: ({ proof, at }) => `${shownBy(proof)}, ${write.day(proof.taken ?? at)}`,
  facts: ({ proof }) => line(shownFacts(proof)),
};
