// What came out of a sweep, in as few words as a list has room for.
import type { Outcome } from '../../sweep/end/outcome.ts';
import { writeSteps } from '../../sweep/scale.ts';

export function resultInWords(outcome: Outcome): string {
  switch (outcome.found) {
    case 'band':
      return writeSteps(outcome.chosen);
    case 'carried over':
      return outcome.service ? `${outcome.side === 'high' ? 'above' : 'below'} the scale` : writeSteps(outcome.chosen);
    case 'past the limit':
      return 'past the limit';
    case 'beyond the scale':
      return `${outcome.side} the scale`;
    case 'nothing':
      return 'nothing held';
  }
}
