// Spanish: what came out of a sweep, short for the ear and whole for the eye.
import type { BandOutcome, CarriedOutcome, Outcome } from '../../sweep/end/outcome.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { sayCorrection } from '../../hearing/languages/es/sayCorrection.ts';
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
      return { spoken: 'Ningún valor dio luz fija.', written: 'La luz no estuvo fija con ningún valor, así que no hay valor que introducir.' };
  }
}

const BEYOND = {
  above: {
    spoken: 'La banda queda por encima del rango.',
    written: 'Toda la banda queda por encima del rango de corrección, así que ninguna corrección la alcanza.',
  },
  below: {
    spoken: 'La banda queda por debajo del rango.',
    written: 'Toda la banda queda por debajo del rango de corrección, así que ninguna corrección la alcanza.',
  },
} as const;

function band({ low, high, centre, chosen, other, within, ends }: BandOutcome): InWords {
  const spoken = sentences(sayCorrection(chosen));
  const enter = `Introduzca ${writeSteps(chosen)}: ${write.chance(within)} de confianza en que el centro está a un paso como mucho.`;
  if (ends === 'believed') return { spoken, written: `${enter} Al menos un extremo de la banda no se ha visto.` };
  const from = low === high ? `La banda es solo ${writeSteps(low)}.` : `La banda va de ${writeSteps(low)} a ${writeSteps(high)}.`;
  if (other === null) return { spoken, written: `${enter} ${from}` };
  return { spoken, written: `${enter} ${from} Su centro está en ${write.signed(centre, 1)}, entre dos valores: ${writeSteps(other)} es igual de bueno.` };
}

function pastTheLimit({ side, visible, bound }: Extract<Outcome, { found: 'past the limit' }>): InWords {
  if (visible === null || bound === null) {
    return { spoken: 'Luz fija con todos los valores.', written: 'La luz está fija con todos los valores, así que no se puede hallar el centro.' };
  }
  const limit = 2 * bound - visible;
  const least = side === 'high' ? `${write.signed(bound, 1)} o más` : `${write.signed(bound, 1)} o menos`;
  return {
    spoken: `La banda sigue más allá de ${sayCorrection(limit)}.`,
    written: `Un extremo de la banda está en ${writeSteps(visible)}. El otro queda más allá de ${writeSteps(limit)}, la última corrección. El centro es ${least}.`,
  };
}

function carriedOver({ visible, centre, interval, chosen, inside, service, ends }: CarriedOutcome): InWords {
  const from = write.signed(Math.floor(2 * interval.from) / 2, 1);
  const to = write.signed(Math.ceil(2 * interval.to) / 2, 1);
  const measured = [
    visible === null
      ? 'Con el enfoque nítido, la luz no estuvo fija con ningún valor.'
      : `Con el enfoque nítido, un extremo de la banda está en ${writeSteps(visible)}.`,
    `La mitad del ancho, medido con el enfoque desviado, sitúa el centro hacia ${write.signed(centre, 1)} (de ${from} a ${to}, ${write.percent(0.95)} de confianza).`,
    ...(ends === 'believed' ? ['Al menos un extremo de ese ancho no se ha visto.'] : []),
  ].join(' ');
  if (!service) return { spoken: sentences(sayCorrection(chosen)), written: `El valor que hay que introducir es ${writeSteps(chosen)}. ${measured}` };
  const still = inside
    ? `Con ${writeSteps(chosen)}, la corrección más cercana, la luz aún está fija, pero el conjunto necesita servicio técnico.`
    : 'Ninguna corrección lo alcanza, así que el conjunto necesita servicio técnico.';
  return {
    spoken: `El centro queda más allá de ${sayCorrection(chosen)}. El conjunto necesita servicio técnico.`,
    written: `${measured} ${still}`,
  };
}
