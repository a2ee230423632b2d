// Spanish: what photographs showed, in a line of the logbook and on paper.
import type { Proof } from '../../photographs/proof.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { ShownWords } from '../shownWords.ts';
import { correctionBetween, focusFell, lengthAtTarget } from './focusFell.ts';
import { write } from './write.ts';

const SHARP = { sharp: 'nítida', 'not sharp': 'no nítida', 'not sure': 'dudosa' } as const;
const VERDICT = { confirmed: 'confirmado', shifted: 'desviado', 'not enough': 'dudoso' } as const;

/** What came out, in a word or two. */
function showed(proof: Proof): string {
  switch (proof.is) {
    case 'one':
      return SHARP[proof.sharp];
    case 'check':
      return `${writeSteps(proof.correction)} ${VERDICT[proof.verdict.is]}`;
    case 'bracket':
      return `centro ${write.signed(proof.centre.value, 1)}`;
  }
}

/** By which pictures. */
function shownBy(proof: Proof): string {
  switch (proof.is) {
    case 'one':
      return 'en una foto';
    case 'check':
      return write.count(proof.shots, { one: 'en una comprobación con # toma', other: 'en una comprobación con # tomas' });
    case 'bracket':
      return write.count(proof.shots.length, { one: 'en un horquillado de # toma', other: 'en un horquillado de # tomas' });
  }
}

/** The figures, each a phrase of its own. */
function shownFacts(proof: Proof): readonly (string | false)[] {
  switch (proof.is) {
    case 'one':
      return [`el enfoque quedó ${focusFell(proof.error)}`];
    case 'check':
      return [
        `el enfoque queda ${focusFell(proof.bias)}`,
        `dispersión entre tomas: ${lengthAtTarget(proof.repeatability)}`,
        proof.nearLessFar !== null && `cerca menos lejos: ${write.signed(proof.nearLessFar.value, 1)}\u00a0mm`,
        !proof.reference && 'sin toma en la vista en vivo',
      ];
    case 'bracket':
      return [
        `${write.percent(0.95)} entre ${write.signed(proof.centre.low, 1)} y ${write.signed(proof.centre.high, 1)}`,
        proof.joined?.is === 'agree' && `concuerda con el centro de la banda; juntos, ${correctionBetween(proof.joined.joint)}`,
        proof.joined?.is === 'differ' && `difiere del centro de la banda, ${write.signed(proof.joined.band.value, 1)}`,
        `un paso mueve el enfoque ${lengthAtTarget(proof.step.value)}`,
        `dispersión entre tomas: ${lengthAtTarget(proof.scatter)}`,
      ];
  }
}

export const shown: ShownWords = {
  showed: ({ proof }) => showed(proof),
  by: ({ proof, at }) => `${shownBy(proof)}, ${write.day(proof.taken ?? at)}`,
  facts: ({ proof }) => line(shownFacts(proof)),
};
