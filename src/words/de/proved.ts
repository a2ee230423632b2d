// German: what photographs showed, in a line of the logbook and on paper.
import type { Proof } from '../../photographs/proof.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { ShownWords } from '../shownWords.ts';
import { correctionBetween, focusFell, lengthAtTarget } from './focusFell.ts';
import { write } from './write.ts';

const SHARP = { sharp: 'scharf', 'not sharp': 'nicht scharf', 'not sure': 'unsicher' } as const;
const VERDICT = { confirmed: 'bestätigt', shifted: 'versetzt', 'not enough': 'unsicher' } as const;

/** What came out, in a word or two. */
function showed(proof: Proof): string {
  switch (proof.is) {
    case 'one':
      return SHARP[proof.sharp];
    case 'check':
      return `${writeSteps(proof.correction)} ${VERDICT[proof.verdict.is]}`;
    case 'bracket':
      return `Mitte ${write.signed(proof.centre.value, 1)}`;
  }
}

/** By which pictures. */
function shownBy(proof: Proof): string {
  switch (proof.is) {
    case 'one':
      return 'in einem Bild';
    case 'check':
      return write.count(proof.shots, { one: 'in einer Prüfserie mit # Aufnahme', other: 'in einer Prüfserie mit # Aufnahmen' });
    case 'bracket':
      return write.count(proof.shots.length, { one: 'in einer Stufenserie mit # Aufnahme', other: 'in einer Stufenserie mit # Aufnahmen' });
  }
}

/** The figures, each a phrase of its own. */
function shownFacts(proof: Proof): readonly (string | false)[] {
  switch (proof.is) {
    case 'one':
      return [`Schärfe ${focusFell(proof.error)}`];
    case 'check':
      return [
        `Schärfe ${focusFell(proof.bias)}`,
        `Streuung der Aufnahmen ${lengthAtTarget(proof.repeatability)}`,
        proof.nearLessFar !== null && `nah minus fern ${write.signed(proof.nearLessFar.value, 1)}\u00a0mm`,
        !proof.reference && 'ohne Aufnahme im Livebild',
      ];
    case 'bracket':
      return [
        `${write.percent(0.95)} zwischen ${write.signed(proof.centre.low, 1)} und ${write.signed(proof.centre.high, 1)}`,
        proof.joined?.is === 'agree' && `stimmt mit der Mitte des Bandes überein, zusammen ${correctionBetween(proof.joined.joint)}`,
        proof.joined?.is === 'differ' && `weicht von der Mitte des Bandes ab, ${write.signed(proof.joined.band.value, 1)}`,
        `eine Stufe versetzt die Schärfe um ${lengthAtTarget(proof.step.value)}`,
        `Streuung der Aufnahmen ${lengthAtTarget(proof.scatter)}`,
      ];
  }
}

export const shown: ShownWords = {
  showed: ({ proof }) => showed(proof),
  by: ({ proof, at }) => `${shownBy(proof)}, ${write.day(proof.taken ?? at)}`,
  facts: ({ proof }) => line(shownFacts(proof)),
};
