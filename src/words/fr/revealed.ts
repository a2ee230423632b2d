// French: what a practice camera really was.
import type { Oddity } from '../../sweep/oddity.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { RevealedFact } from '../resultWords.ts';
import { write } from './write.ts';

const MADE: Readonly<Record<Oddity, string>> = {
  'flickers everywhere': 'Ce simulateur était fait pour clignoter à toutes les valeurs.',
  'never lights': 'Ce simulateur était fait pour rester éteint.',
  'lights everywhere': 'Ce simulateur était fait pour rester allumé à toutes les valeurs.',
  'hole in the band': 'Ce simulateur avait un trou au milieu de sa bande.',
  'arrows turn round': 'Les flèches de ce simulateur devaient s’inverser pendant le balayage.',
  'focus moves': 'La mise au point de ce simulateur devait bouger pendant le balayage.',
};

export function factRevealed(fact: RevealedFact): string {
  switch (fact.is) {
    case 'held':
      return `Sur ce simulateur, le témoin est fixe de ${at(fact.low)} à ${at(fact.high)}. Le vrai centre est ${at((fact.low + fact.high) / 2)}.`;
    case 'made wrong':
      return `${MADE[fact.how]} ${fact.named ? 'Le balayage l’a reconnu.' : 'Le balayage ne l’a pas rencontré assez souvent pour le reconnaître.'}`;
    case 'gap':
      return `Sa bande va de ${at(fact.low)} à ${at(fact.high)}, mais le témoin n’y tient pas de ${at(fact.from)} à ${at(fact.to)}.`;
    case 'moved':
      return (
        `Le témoin était fixe de ${at(fact.low)} à ${at(fact.high)} d’abord, ` +
        `puis de ${at(fact.low + fact.by)} à ${at(fact.high + fact.by)} une fois que la mise au point avait bougé.`
      );
    case 'value off':
      return `${writeSteps(fact.value)} s’en écarte de ${steps(fact.off)}.`;
    case 'centre off':
      return `Le centre trouvé s’en écarte de ${steps(fact.off)}.`;
    case 'not found':
      return 'Le balayage ne l’a pas trouvé.';
  }
}

const at = (place: number): string => write.signed(place, 1);

const steps = (off: number): string => (off < 1 ? 'moins d’un pas' : write.count(off, { other: '# pas' }, 1));
