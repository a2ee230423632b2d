// Spanish: what a practice camera really was.
import type { Oddity } from '../../sweep/oddity.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { RevealedFact } from '../resultWords.ts';
import { write } from './write.ts';

const MADE: Readonly<Record<Oddity, string>> = {
  'flickers everywhere': 'La luz de esta cámara de práctica parpadeaba a propósito con todos los valores.',
  'never lights': 'La luz de esta cámara de práctica no se encendía nunca, a propósito.',
  'lights everywhere': 'La luz de esta cámara de práctica se encendía a propósito con todos los valores.',
  'hole in the band': 'Esta cámara de práctica tenía un hueco en medio de la banda.',
  'arrows turn round': 'Las flechas de esta cámara de práctica se invertían durante el barrido.',
  'focus moves': 'El enfoque de esta cámara de práctica se movía durante el barrido.',
};

export function factRevealed(fact: RevealedFact): string {
  switch (fact.is) {
    case 'held':
      return `Esta cámara de práctica da luz fija de ${at(fact.low)} a ${at(fact.high)}. Su centro verdadero es ${at((fact.low + fact.high) / 2)}.`;
    case 'made wrong':
      return `${MADE[fact.how]} ${fact.named ? 'El barrido lo señaló.' : 'El barrido no lo vio las veces suficientes para señalarlo.'}`;
    case 'gap':
      return `Su banda va de ${at(fact.low)} a ${at(fact.high)} y falla de ${at(fact.from)} a ${at(fact.to)}.`;
    case 'moved':
      return (
        `Al principio daba luz fija de ${at(fact.low)} a ${at(fact.high)}; ` +
        `una vez movido el enfoque, de ${at(fact.low + fact.by)} a ${at(fact.high + fact.by)}.`
      );
    case 'value off':
      return fact.off < 1 ? `${writeSteps(fact.value)} se desvía menos de un paso.` : `${writeSteps(fact.value)} se desvía ${steps(fact.off)}.`;
    case 'centre off':
      return fact.off < 1 ? 'El centro hallado se desvía menos de un paso.' : `El centro hallado se desvía ${steps(fact.off)}.`;
    case 'not found':
      return 'El barrido no lo encontró.';
  }
}

const at = (place: number): string => write.signed(place, 1);

const steps = (off: number): string => write.count(off, { one: '# paso', other: '# pasos' }, 1);
