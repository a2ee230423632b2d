// English: what a practice camera really was.
import type { Oddity } from '../../sweep/oddity.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { RevealedFact } from '../resultWords.ts';
import { write } from './write.ts';

const MADE: Readonly<Record<Oddity, string>> = {
  'flickers everywhere': 'This practice camera was made to flicker at every value.',
  'never lights': 'This practice camera was made to stay dark.',
  'lights everywhere': 'This practice camera was made to light at every value.',
  'hole in the band': 'This practice camera was made with a gap in the middle of its band.',
  'arrows turn round': 'The arrows of this practice camera were made to turn round during the sweep.',
  'focus moves': 'The focus of this practice camera was made to move during the sweep.',
};

export function factRevealed(fact: RevealedFact): string {
  switch (fact.is) {
    case 'held':
      return `This practice camera is steady from ${at(fact.low)} to ${at(fact.high)}. Its true centre is ${at((fact.low + fact.high) / 2)}.`;
    case 'made wrong':
      return `${MADE[fact.how]} ${fact.named ? 'The sweep named it.' : 'The sweep did not meet it often enough to name it.'}`;
    case 'gap':
      return `Its band runs from ${at(fact.low)} to ${at(fact.high)}, and fails from ${at(fact.from)} to ${at(fact.to)}.`;
    case 'moved':
      return (
        `It was steady from ${at(fact.low)} to ${at(fact.high)} at first, ` +
        `and from ${at(fact.low + fact.by)} to ${at(fact.high + fact.by)} once the focus had moved.`
      );
    case 'value off':
      return `${writeSteps(fact.value)} is off by ${steps(fact.off)}.`;
    case 'centre off':
      return `The centre found is off by ${steps(fact.off)}.`;
    case 'not found':
      return 'The sweep did not find it.';
  }
}

const at = (place: number): string => write.signed(place, 1);

const steps = (off: number): string => (off < 1 ? 'less than one step' : write.count(off, { one: '# step', other: '# steps' }, 1));
