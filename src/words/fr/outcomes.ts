// French: what came out of a sweep, short for the ear and whole for the eye.
import type { BandOutcome, CarriedOutcome, Outcome } from '../../sweep/end/outcome.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { sayCorrection } from '../../hearing/languages/fr/sayCorrection.ts';
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
      return { spoken: 'Le témoin n’est fixe nulle part.', written: 'Le témoin n’a été fixe à aucune valeur : il n’y a donc pas de valeur à saisir.' };
  }
}

const BEYOND = {
  above: {
    spoken: 'La bande est au-dessus de la plage.',
    written: 'Toute la bande est au-dessus de la plage de corrections : aucune correction ne l’atteint.',
  },
  below: {
    spoken: 'La bande est au-dessous de la plage.',
    written: 'Toute la bande est au-dessous de la plage de corrections : aucune correction ne l’atteint.',
  },
} as const;

function band({ low, high, centre, chosen, other, within, ends }: BandOutcome): InWords {
  const spoken = sentences(sayCorrection(chosen));
  const enter = `Saisissez ${writeSteps(chosen)} : le centre à un pas près, sûr à ${write.chance(within)}.`;
  if (ends === 'believed') return { spoken, written: `${enter} Une extrémité de la bande au moins n’a pas été vue.` };
  const from = low === high ? `La bande se réduit à ${writeSteps(low)}.` : `La bande va de ${writeSteps(low)} à ${writeSteps(high)}.`;
  if (other === null) return { spoken, written: `${enter} ${from}` };
  return { spoken, written: `${enter} ${from} Son centre est à ${write.signed(centre, 1)}, entre deux valeurs : ${writeSteps(other)} convient aussi bien.` };
}

function pastTheLimit({ side, visible, bound }: Extract<Outcome, { found: 'past the limit' }>): InWords {
  if (visible === null || bound === null) {
    return { spoken: 'Le témoin est fixe partout.', written: 'Le témoin est fixe à toutes les valeurs : le centre ne peut donc pas être trouvé.' };
  }
  const limit = 2 * bound - visible;
  const least = side === 'high' ? `${write.signed(bound, 1)} ou plus haut` : `${write.signed(bound, 1)} ou plus bas`;
  return {
    spoken: `La bande dépasse ${sayCorrection(limit)}.`,
    written: `Une extrémité de la bande est à ${writeSteps(visible)}. L’autre est au-delà de ${writeSteps(limit)}, la dernière correction. Le centre est à ${least}.`,
  };
}

function carriedOver({ visible, centre, interval, chosen, inside, service, ends }: CarriedOutcome): InWords {
  const from = write.signed(Math.floor(2 * interval.from) / 2, 1);
  const to = write.signed(Math.ceil(2 * interval.to) / 2, 1);
  const measured = [
    visible === null ? 'Au point net, le témoin n’a été fixe à aucune valeur.' : `Au point net, une extrémité de la bande est à ${writeSteps(visible)}.`,
    `La moitié de la largeur, mesurée avec la mise au point décalée, place le centre vers ${write.signed(centre, 1)} (de ${from} à ${to}, sûr à ${write.percent(0.95)}).`,
    ...(ends === 'believed' ? ['Une extrémité de cette largeur au moins n’a pas été vue.'] : []),
  ].join(' ');
  if (!service) return { spoken: sentences(sayCorrection(chosen)), written: `La valeur à saisir est ${writeSteps(chosen)}. ${measured}` };
  const still = inside
    ? `À ${writeSteps(chosen)}, la correction la plus proche, le témoin est encore fixe, mais le couple doit passer en atelier.`
    : 'Aucune correction ne l’atteint : le couple doit passer en atelier.';
  return { spoken: `Le centre est au-delà de ${sayCorrection(chosen)}. Le couple doit passer en atelier.`, written: `${measured} ${still}` };
}
