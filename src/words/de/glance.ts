// German: all lenses of a body at one look.
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { GlanceWords } from '../glanceWords.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

function measuredAs({ found, low, high, centre, interval }: Measured): readonly (string | false)[] {
  if (found === 'nothing') return ['Kein Band gefunden.'];
  if (found === 'beyond the scale') return ['Die Mitte liegt außerhalb des Bereichs.'];
  const between = interval && `zwischen ${write.signed(interval.from, 1)} und ${write.signed(interval.to, 1)}`;
  return [
    low !== null && high !== null && `Band ${writeSteps(low)} bis ${writeSteps(high)}.`,
    centre !== null && `Mitte ${write.signed(centre, 1)}${between ? `, ${between}` : ''}.`,
    centre === null && between !== null && `Mitte ${between}.`,
  ];
}

export const words: GlanceWords = {
  title: 'Objektive im Überblick',
  legend: 'Balken: das Band. Punkt: seine Mitte, mit 95-%-Intervall. Quadrat: in der Kamera eingestellt.',
  more: (count) => `Alle ${write.number(count)} zeigen`,
  place,
  strip: ({ measured, entered }) =>
    [...(measured ? measuredAs(measured) : ['Noch nicht gemessen.']), entered !== null && `${writeSteps(entered.value)} ist eingestellt.`]
      .filter(Boolean)
      .join(' '),
};
