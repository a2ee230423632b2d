// French: what may be wrong beside the correction.
import { writeSteps } from '../../sweep/scale.ts';
import type { ArrowsContradict, Trouble } from '../../sweep/trouble/trouble.ts';
import type { Named, TroubleWords } from '../troubleWords.ts';
import { CHECKS } from './checks.ts';
import { drifted } from './drift.ts';
import { write } from './write.ts';

const NAMES: Readonly<Record<Named['trouble'], string>> = {
  'flickers everywhere': 'Clignotant partout',
  'never lights': 'Éteint partout',
  'lights everywhere': 'Fixe partout',
  'hole in the band': 'Un trou dans la bande',
  'arrows contradict the lights': 'Les flèches contredisent le témoin',
  'focus moved': 'La mise au point a bougé',
  'verdicts misjudged': 'Des réponses qui ne concordent pas',
  'band drifts': 'Une bande qui dérive',
  play: 'Le sens de réglage compte',
  'sweeps differ': 'Les balayages diffèrent',
};

function seen(found: Trouble): string {
  switch (found.trouble) {
    case 'flickers everywhere':
      return 'Le témoin ne tient à aucune valeur ; le plus souvent, il clignote.';
    case 'never lights':
      return 'Le témoin reste éteint à toutes les valeurs.';
    case 'lights everywhere':
      return 'Le témoin est fixe à toutes les valeurs, d’une limite à l’autre.';
    case 'hole in the band':
      return found.from === found.to
        ? `Le témoin ne tient pas à ${writeSteps(found.from)}, mais il est fixe des deux côtés. Ne vous fiez pas au centre.`
        : `Le témoin ne tient pas de ${writeSteps(found.from)} à ${writeSteps(found.to)}, mais il est fixe des deux côtés. Ne vous fiez pas au centre.`;
    case 'arrows contradict the lights':
      return ARROWS[found.how];
    case 'verdicts misjudged':
      return found.values.length === 1
        ? `La réponse à ${writeSteps(found.values[0] ?? 0)} ne concorde pas avec les autres. Elle ne compte pas.`
        : `Les réponses à ${write.list(found.values.map(writeSteps))} ne concordent pas avec les autres. Elles ne comptent pas.`;
    case 'band drifts':
      return `La bande se déplace d’environ ${inSteps(Math.abs(found.rate))} par minute. Le centre donné est celui de maintenant.`;
    case 'play':
      return `Selon que vous montez ou descendez vers une valeur, la bande se déplace d’environ ${inSteps(2 * found.size)}. Le centre est entre les deux.`;
    case 'focus moved':
      return found.seen ? 'En visée écran, la mise au point avait bougé.' : drifted(found);
  }
}

const ARROWS: Readonly<Record<ArrowsContradict['how'], string>> = {
  'turned round': 'Les flèches vont à l’inverse de ce qu’indique le matériel pour ce boîtier.',
  'turned midway': 'Les flèches allaient d’abord dans un sens, puis dans l’autre.',
  'by chance': 'Les flèches montent et descendent sans rapport avec le témoin.',
};

function evidence(found: Named): string {
  switch (found.trouble) {
    case 'flickers everywhere':
    case 'never lights':
    case 'lights everywhere': {
      const alike =
        found.alike === found.of
          ? `Les ${write.number(found.of)} valeurs ont donné la même chose.`
          : `${write.number(found.alike)} valeurs sur ${write.number(found.of)} ont donné la même chose.`;
      return `${alike} Cote contre une bande, quelle qu’elle soit : ${odds(found)}.`;
    }
    case 'hole in the band':
      return `Cote contre une bande sans trou : ${odds(found)}.`;
    case 'arrows contradict the lights':
      return `Cote contre des flèches conformes au matériel : ${odds(found)}.`;
    case 'verdicts misjudged':
      return `Cote en faveur d’une erreur de jugement : ${odds(found)}.`;
    case 'band drifts':
      return `Cote contre une bande qui ne bouge pas : ${odds(found)}.`;
    case 'play':
      return `Cote contre une bande indifférente au sens de réglage : ${odds(found)}.`;
    case 'focus moved':
      return `Cote en faveur d’un déplacement : ${odds(found)}, le plus probable après l’essai ${write.number(found.afterHold)}.`;
    case 'sweeps differ':
      return `L’écart est de ${inSteps(found.apart)}. Le hasard explique jusqu’à ${inSteps(found.allowed)}, sûr à ${write.percent(0.95)}. Cote en faveur d’une différence : ${odds(found)}.`;
  }
}

/** Odds beyond this say no more to a person. */
const MOST = 1000;
const odds = ({ bayesFactor }: { readonly bayesFactor: number }): string =>
  bayesFactor > MOST ? `plus de ${write.number(MOST)} contre 1` : `${write.number(bayesFactor)} contre 1`;

const inSteps = (count: number): string => write.count(count, { other: '# pas' }, 1);

export const words: TroubleWords = {
  name: (found) => (found.trouble === 'focus moved' && !found.seen ? 'La mise au point a-t-elle bougé ?' : NAMES[found.trouble]),
  seen,
  evidence,
  checks: CHECKS,
  toCheck: {
    open: 'À vérifier',
    title: 'À vérifier, le plus probable d’abord',
    figures: 'Chiffres',
    manual: 'Si le mode d’emploi de votre appareil dit autre chose, suivez-le.',
  },
};
