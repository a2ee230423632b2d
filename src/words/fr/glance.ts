// French: all lenses of a body at one look.
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { GlanceWords } from '../glanceWords.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

function measuredAs({ found, low, high, centre, interval }: Measured): readonly (string | false)[] {
  if (found === 'nothing') return ['Aucune bande trouvée.'];
  if (found === 'beyond the scale') return ['Le centre est hors plage.'];
  const between = interval && `entre ${write.signed(interval.from, 1)} et ${write.signed(interval.to, 1)}`;
  return [
    low !== null && high !== null && `Bande ${writeSteps(low)} à ${writeSteps(high)}.`,
    centre !== null && `Centre ${write.signed(centre, 1)}${between ? `, ${between}` : ''}.`,
    centre === null && between !== null && `Centre ${between}.`,
  ];
}

export const words: GlanceWords = {
  title: 'Objectifs en un coup d’œil',
  legend: `Barre : la bande. Rond : son centre, avec l’intervalle à ${write.percent(0.95)}. Carré : saisi dans l’appareil.`,
  more: (count) => `Montrer les ${write.number(count)}`,
  place,
  strip: ({ measured, entered }) =>
    [...(measured ? measuredAs(measured) : ['Pas encore mesuré.']), entered !== null && `${writeSteps(entered.value)} est saisi.`].filter(Boolean).join(' '),
};
