// German: what a practice camera really was.
import type { Oddity } from '../../sweep/oddity.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { RevealedFact } from '../resultWords.ts';
import { write } from './write.ts';

const MADE: Readonly<Record<Oddity, string>> = {
  'flickers everywhere': 'Diese Übungskamera flackert absichtlich bei jedem Wert.',
  'never lights': 'Diese Übungskamera bleibt absichtlich dunkel.',
  'lights everywhere': 'Diese Übungskamera leuchtet absichtlich bei jedem Wert.',
  'hole in the band': 'Diese Übungskamera hat absichtlich eine Lücke mitten im Band.',
  'arrows turn round': 'Die Pfeile dieser Übungskamera kehren sich während des Durchlaufs absichtlich um.',
  'focus moves': 'Der Fokus dieser Übungskamera verschiebt sich während des Durchlaufs absichtlich.',
};

export function factRevealed(fact: RevealedFact): string {
  switch (fact.is) {
    case 'held':
      return `Diese Übungskamera ist von ${at(fact.low)} bis ${at(fact.high)} stabil. Ihre wahre Mitte ist ${at((fact.low + fact.high) / 2)}.`;
    case 'made wrong':
      return `${MADE[fact.how]} ${fact.named ? 'Der Durchlauf hat es erkannt.' : 'Dem Durchlauf ist es zu selten begegnet, um es zu erkennen.'}`;
    case 'gap':
      return `Ihr Band reicht von ${at(fact.low)} bis ${at(fact.high)}, mit einer Lücke von ${at(fact.from)} bis ${at(fact.to)}.`;
    case 'moved':
      return (
        `Zuerst war sie von ${at(fact.low)} bis ${at(fact.high)} stabil, ` +
        `und von ${at(fact.low + fact.by)} bis ${at(fact.high + fact.by)}, nachdem sich der Fokus verschoben hatte.`
      );
    case 'value off':
      return `${writeSteps(fact.value)} liegt ${steps(fact.off)} daneben.`;
    case 'centre off':
      return `Die gefundene Mitte liegt ${steps(fact.off)} daneben.`;
    case 'not found':
      return 'Der Durchlauf hat es nicht gefunden.';
  }
}

const at = (place: number): string => write.signed(place, 1);

const steps = (off: number): string => (off < 1 ? 'weniger als eine Stufe' : write.count(off, { one: '# Stufe', other: '# Stufen' }, 1));
