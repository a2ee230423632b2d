// Where a situation stands, in a few words.
import type { Shelved } from '../../logbook/shelf.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { onDay } from '../words/quantities.ts';

export function standingInWords({ state, at, value, measured }: Pick<Shelved, 'state' | 'at' | 'value' | 'measured'>): string {
  if (state === 'never measured' || at === null) return 'never measured';
  if (measured?.service) return `needs service, measured ${onDay(measured.at)}`;
  if (value === null) return `no value found, ${onDay(at)}`;
  switch (state) {
    case 'measured':
      return `measured ${onDay(at)}, not entered yet`;
    case 'entered':
      return `entered ${onDay(at)}`;
    case 'differ':
      return `entered ${onDay(at)}, but ${writeSteps(measured?.chosen ?? value)} was measured`;
  }
}
