// German: what came out of a sweep, short for the ear and whole for the eye.
import type { BandOutcome, CarriedOutcome, Outcome } from '../../sweep/end/outcome.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { sayCorrection } from '../../hearing/languages/de/sayCorrection.ts';
import type { InWords } from '../inWords.ts';
import { sentences } from './sentence.ts';
import { write } from './write.ts';

export function outcome(found: Outcome): InWords {
  switch (found.found) {
    case 'band':
      return band(found);
    case 'past the limit':
      return pastTheLimit(found);
    case 'carried over':
      return carriedOver(found);
    case 'beyond the scale':
      return BEYOND[found.side];
    case 'nothing':
      return { spoken: 'Kein Wert war stabil.', written: 'Das Licht war bei keinem Wert stabil, es gibt also keinen Wert zum Einstellen.' };
  }
}

const BEYOND = {
  above: {
    spoken: 'Das Band liegt über dem Bereich.',
    written: 'Das ganze Band liegt über dem Korrektur\u00adbereich, keine Korrektur erreicht es.',
  },
  below: {
    spoken: 'Das Band liegt unter dem Bereich.',
    written: 'Das ganze Band liegt unter dem Korrektur\u00adbereich, keine Korrektur erreicht es.',
  },
} as const;

function band({ low, high, centre, chosen, other, within, ends }: BandOutcome): InWords {
  const spoken = sentences(sayCorrection(chosen));
  const enter = `Stellen Sie ${writeSteps(chosen)} fest ein: mit ${write.chance(within)} Sicherheit höchstens eine Stufe neben der Mitte.`;
  if (ends === 'believed') return { spoken, written: `${enter} Mindestens ein Ende des Bandes wurde nicht gesehen.` };
  const from = low === high ? `Das Band ist ein einziger Wert, ${writeSteps(low)}.` : `Das Band reicht von ${writeSteps(low)} bis ${writeSteps(high)}.`;
  if (other === null) return { spoken, written: `${enter} ${from}` };
  return {
    spoken,
    written: `${enter} ${from} Seine Mitte liegt bei ${write.signed(centre, 1)}, zwischen zwei Werten: ${writeSteps(other)} ist ebenso gut.`,
  };
}

function pastTheLimit({ side, visible, bound }: Extract<Outcome, { found: 'past the limit' }>): InWords {
  if (visible === null || bound === null) {
    return { spoken: 'Jeder Wert ist stabil.', written: 'Das Licht ist bei jedem Wert stabil, die Mitte lässt sich also nicht finden.' };
  }
  const limit = 2 * bound - visible;
  const least = side === 'high' ? `${write.signed(bound, 1)} oder höher` : `${write.signed(bound, 1)} oder tiefer`;
  return {
    spoken: `Das Band reicht über ${sayCorrection(limit)} hinaus.`,
    written: `Ein Ende des Bandes liegt bei ${writeSteps(visible)}, das andere jenseits von ${writeSteps(limit)}, der letzten Korrektur. Die Mitte liegt bei ${least}.`,
  };
}

function carriedOver({ visible, centre, interval, chosen, inside, service, ends }: CarriedOutcome): InWords {
  const from = write.signed(Math.floor(2 * interval.from) / 2, 1);
  const to = write.signed(Math.ceil(2 * interval.to) / 2, 1);
  const measured = [
    visible === null ? 'Scharfgestellt war das Licht bei keinem Wert stabil.' : `Scharfgestellt liegt ein Ende des Bandes bei ${writeSteps(visible)}.`,
    `Die halbe Breite, mit absichtlich verstelltem Fokus gemessen, ergibt eine Mitte von etwa ${write.signed(centre, 1)} (mit ${write.percent(0.95)} Sicherheit ${from} bis ${to}).`,
    ...(ends === 'believed' ? ['Mindestens ein Ende dieser Breite wurde nicht gesehen.'] : []),
  ].join(' ');
  if (!service) return { spoken: sentences(sayCorrection(chosen)), written: `Der Wert zum Einstellen ist ${writeSteps(chosen)}. ${measured}` };
  const still = inside
    ? `Bei ${writeSteps(chosen)}, der nächsten Korrektur, ist das Licht noch stabil, aber die Kombination muss in die Werkstatt.`
    : 'Keine Korrektur erreicht sie, die Kombination muss also in die Werkstatt.';
  return {
    spoken: `Die Mitte liegt jenseits von ${sayCorrection(chosen)}. Die Kombination muss in die Werkstatt.`,
    written: `${measured} ${still}`,
  };
}
