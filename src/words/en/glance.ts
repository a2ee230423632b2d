// English: all lenses of a body at one look.
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { GlanceWords } from '../glanceWords.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

function measuredAs({ found, low, high, centre, interval }: Measured): readonly (string | false)[] {
  if (found === 'nothing') return ['No band was found.'];
  if (found === 'beyond the scale') return ['The centre lies outside the range.'];
  const between = interval && `between ${write.signed(interval.from, 1)} and ${write.signed(interval.to, 1)}`;
  return [
    low !== null && high !== null && `Band ${writeSteps(low)} to ${writeSteps(high)}.`,
    centre !== null && `Centre ${write.signed(centre, 1)}${between ? `, ${between}` : ''}.`,
    centre === null && between !== null && `Centre ${between}.`,
  ];
}

export const words: GlanceWords = {
  title: 'Lenses at a glance',
  legend: 'Bar: the band. Dot: its centre, with the 95% interval. Square: entered in the camera.',
  more: (count) => `Show all ${write.number(count)}`,
  place,
  strip: ({ measured, entered }) =>
    [...(measured ? measuredAs(measured) : ['Not measured yet.']), entered !== null && `${writeSteps(entered.value)} is entered.`].filter(Boolean).join(' '),
};
