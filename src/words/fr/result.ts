// French: what came out of a sweep and what to do about it.
import type { CarriedOutcome } from '../../sweep/end/outcome.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { line } from '../line.ts';
import type { ResultWords } from '../resultWords.ts';
import { factRevealed } from './revealed.ts';
import { write } from './write.ts';

const HOLDS = { one: '# essai', other: '# essais' };

const visible = (end: Steps | null): string => (end === null ? 'fixe à aucune valeur' : `fixe de ${writeSteps(end)} à la limite`);

function service({ chosen, centre, inside }: CarriedOutcome): string {
  const past = `Le centre est vers ${write.signed(centre, 1)}, au-delà de ${writeSteps(chosen)}, la dernière correction de ce boîtier.`;
  return inside ? `${past} Le témoin y est encore fixe.` : `${past} Le témoin n’est fixe à aucune correction.`;
}

const FOCUS =
  'Refaites la mise au point en visée écran, image agrandie, à pleine ouverture, puis passez l’objectif en mise au point manuelle sans toucher la bague.';
const OTHER = 'Vérifiez qu’aucune autre correction n’est active dans le boîtier, par exemple une correction commune à tous les objectifs.';
const SERVICE = 'Si le résultat est encore le même, confiez le couple au service après-vente de la marque.';

export const words: ResultWords = {
  region: 'Résultat',
  placed: (found, within) => `décalée exprès depuis ${writeSteps(found)}, sûr à ${write.chance(within)}, à un pas près`,
  between: (value, other) =>
    `Le centre est entre ${writeSteps(value)} et ${writeSteps(other)}, et les essais ne préfèrent ni l’un ni l’autre. ${writeSteps(value)} est plus près de zéro.`,
  headline: {
    'past the limit': 'Limite dépassée',
    'beyond the scale': 'Hors plage',
    nothing: 'Jamais fixe',
    'no hold': 'Aucun essai',
    service: 'À faire réviser',
  },
  noHold: 'Sans essai, il n’y a pas de valeur à saisir.',
  service,
  facts: {
    centre: 'Centre',
    place: (at) => write.signed(at, 1),
    band: 'Bande',
    range: (low, high) => (low === high ? writeSteps(low) : `${writeSteps(low)} à ${writeSteps(high)}`),
    endsNotSeen: 'une extrémité au moins n’a pas été essayée des deux côtés',
    seenInFocus: 'Vu au point net',
    visible,
    halfWidth: 'Demi-largeur',
    width: (half, from, to) => `${write.number(half, 1)}, entre ${write.number(from, 1)} et ${write.number(to, 1)}`,
    figures: 'Chiffres',
    interval: `Intervalle à ${write.percent(0.95)}`,
    within: (from, to) => `${write.signed(from, 1)} à ${write.signed(to, 1)}`,
  },
  drawing: {
    said: (outcome, { min, max }) =>
      `Les corrections de ${writeSteps(min)} à ${writeSteps(max)} : ${visible(outcome.visible)}, le centre vers ${write.signed(outcome.centre, 1)}.`,
    held: 'fixe',
    beyond: 'hors limite',
    lies: 'place de la bande',
    centre: `centre, ${write.percent(0.95)}`,
  },
  holds: {
    aside: 'Les essais avec la mise au point décalée :',
    made: (count, time) => line([write.count(count, HOLDS), write.duration(time)]),
    spent: (count) =>
      write.count(count, {
        one: '# essai, fait avant que la mise au point ne bouge, ne compte pas.',
        other: '# essais, faits avant que la mise au point ne bouge, ne comptent pas.',
      }),
  },
  next: {
    title: 'Et maintenant',
    enter: (value) =>
      `Saisissez la valeur ${writeSteps(value)} dans l’appareil pour cet objectif, et vérifiez que la correction y est activée. Marquez ensuite la valeur comme saisie.`,
    enterMeanwhile: (value) =>
      `En attendant la révision, saisissez la valeur ${writeSteps(value)} dans l’appareil pour cet objectif. Marquez ensuite la valeur comme saisie.`,
    marked: (value) => `${writeSteps(value)} est marqué comme saisi dans l’appareil.`,
    check:
      'Contrôlez la valeur par photos : six images avec l’autofocus au viseur, et une avec le point fait en visée écran. Avant chacune des six, tournez la bague, tantôt vers le plus près, tantôt vers l’infini.',
    photographs: 'Contrôler par photos',
    focusAgain: 'Refaites une mise au point rigoureuse en visée écran : elle est encore décalée.',
    service:
      'Montrez la page pour l’atelier à un service agréé par la marque. Ne démontez ni l’objectif ni le boîtier : un réglage à la main peut les laisser en plus mauvais état.',
    mark: 'Marquer comme saisi',
    lens: 'Objectif suivant',
    plan: 'Continuer le programme',
    otherwise: 'Autre valeur, date ou note',
    allTheSame: 'Avez-vous saisi une valeur malgré tout ?',
    takeMarkBack: 'Retirer la marque',
    backToSweep: 'Revenir au balayage',
    presses: 'Le contacteur maintenant',
  },
  width: {
    workshop: 'Page pour l’atelier',
    title: 'Trouver le centre par la largeur',
    why: 'La bande a la même largeur où que soit la mise au point. Avec une mise au point un peu décalée, toute la bande tombe dans la plage, et sa largeur montre où est le centre.',
    practice: 'Le simulateur tourne sa propre bague, et montre ensuite sa vraie bande.',
    steps: [
      'Laissez l’appareil, l’objectif et la mire comme ils sont.',
      'En visée écran, tournez un peu la bague, juste assez pour perdre la netteté. Le panneau dit si c’était le mauvais sens.',
      'Faites le balayage comme avant, sans toucher la bague.',
      'Refaites ensuite une mise au point rigoureuse.',
    ],
    measure: 'Mesurer la largeur',
  },
  // Common practice, no source.
  checks: {
    title: 'À vérifier',
    of: {
      'past the limit': [FOCUS, OTHER, SERVICE],
      'beyond the scale': [FOCUS, OTHER, SERVICE],
      nothing: [
        FOCUS,
        'Placez la mire bien parallèle au capteur, éclairée régulièrement, plus contrastée que ce qui l’entoure.',
        'Vérifiez que le collimateur actif est sur la mire, et que l’objectif est assez lumineux pour l’autofocus du viseur.',
        'Sur un boîtier réglé pour faire le point au bouton arrière, c’est ce bouton qui allume le témoin, pas l’appui à mi-course.',
        'Vérifiez que le voyant observé est bien le témoin de mise au point, et non celui de la mémorisation d’exposition.',
      ],
    },
  },
  practice: { title: 'Le simulateur', revealed: factRevealed, pictures: 'Contrôler avec des images simulées' },
};
