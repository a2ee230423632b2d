// French: the set-up walk.
import type { StepOf } from '../../optics/setUp/step.ts';
import type { StepId } from '../../optics/setUp/stepIds.ts';
import type { Each, SetUpWords } from '../setUpWords.ts';
import { sentences } from './sentence.ts';
import { DRAWN } from './stepsDrawn.ts';
import { SHOWN } from './stepsShown.ts';
import { SPOKEN } from './stepsSpoken.ts';
import { write } from './write.ts';

const DONE = 'Tout est en place. Prêt pour le premier essai.';

const of = <Id extends StepId>(each: Each, step: StepOf<Id> & { readonly id: Id }): string => each[step.id](step);

export const words: SetUpWords = {
  title: 'Mise en place',
  progress: { label: 'Avancement', at: (step, all) => `Étape ${write.number(step)} sur ${write.number(all)}`, done: 'Tout est fait' },
  noAperture: 'Indiquez d’abord l’ouverture maximale au banc.',
  speak: (what) => (what === 'done' ? DONE : of(SPOKEN, what)),
  show: (step) => of(SHOWN, step),
  pictures: DRAWN,
  step: {
    label: 'Étape',
    before: 'Fait auparavant.',
    liveView: { ask: 'L’image en visée écran est-elle au plus net ?', sharp: 'Elle est nette', not: 'Non' },
    keep: 'Garder ce relevé',
    kept: (reading) => sentences('gardé', reading),
  },
  done: {
    label: 'En place',
    tooLate: 'Le premier essai a déjà été fait : la mise en place n’est pas gardée avec ce balayage. Faites-la avant le prochain.',
  },
  leadsTo: 'Vers le premier essai',
  means: 'fait : étape suivante',
  also: 'Compris aussi maintenant',
};
