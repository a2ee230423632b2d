// French: why a value is held next, as it follows the value. "+6 : à mi-chemin entre +3 (fixe) et +9 (éteint)".
import type { Landmark } from '../../sweep/next/reason.ts';
import type { Suggestion } from '../../sweep/next/suggestion.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { LIGHT } from './verdict.ts';
import { write } from './write.ts';

export function reason({ value, reason: why }: Suggestion): string {
  switch (why.because) {
    case 'start':
      return 'le centre le plus probable, pour commencer';
    case 'remembered': {
      const when = write.monthAndYear(why.from.at);
      return why.from.of === 'situation' ? `le centre trouvé en ${when}` : `près du centre de ce couple en ${when}, à une autre focale ou distance`;
    }
    case 'between': {
      const isHalfway = why.below.value + why.above.value === 2 * value;
      return `${isHalfway ? 'à mi-chemin entre' : 'entre'} ${landmark(why.below)} et ${landmark(why.above)}`;
    }
    case 'beyond':
      return why.side === 'above' ? `au-dessus de ${landmark(why.of)}` : `au-dessous de ${landmark(why.of)}`;
    case 'surer':
      return why.of.light === 'untold'
        ? 'encore une fois, par sécurité, après un échec'
        : `encore une fois, par sécurité : le témoin y était ${lightOf(why.of)}`;
    case 'again':
      return 'encore une fois, car la dernière réponse y était inattendue';
    case 'end':
      return END[why.part][why.side];
    case 'unmoved':
      return 'pour vérifier que la mise au point n’a pas bougé depuis les premiers essais';
    case 'proof':
      return 'la valeur à saisir, qui n’a pas encore été essayée';
    case 'doubted':
      return 'encore une fois, car la réponse y contredit les autres';
    case 'yours':
      return 'votre propre choix';
  }
}

const END = {
  last: { low: 'pour vérifier la dernière valeur de la bande, en bas', high: 'pour vérifier la dernière valeur de la bande, en haut' },
  next: { low: 'pour vérifier la première valeur sous la bande', high: 'pour vérifier la première valeur au-dessus de la bande' },
} as const;

/** The same as it is said before the first hold; null where there is nothing to add to the value. */
export function startAloud({ reason: why }: Suggestion): string | null {
  if (why.because !== 'remembered') return null;
  const when = write.month(why.from.at);
  return why.from.of === 'situation' ? `comme en ${when}` : `proche de ce couple en ${when}`;
}

const landmark = (held: Landmark): string => `${writeSteps(held.value)} (${lightOf(held)})`;

/** A steady light that an arrow told against is told with its arrow, or it would contradict how it counts. */
const lightOf = ({ light, counts }: Landmark): string => (light === 'steady' && counts === 'out' ? 'fixe avec une seule flèche' : LIGHT[light]);
