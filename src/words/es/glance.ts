// Spanish: all lenses of a body at one look.
import type { Measured } from '../../logbook/measured.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { GlanceWords } from '../glanceWords.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

function measuredAs({ found, low, high, centre, interval }: Measured): readonly (string | false)[] {
  if (found === 'nothing') return ['No se halló ninguna banda.'];
  if (found === 'beyond the scale') return ['El centro queda fuera del rango.'];
  const between = interval && `entre ${write.signed(interval.from, 1)} y ${write.signed(interval.to, 1)}`;
  return [
    low !== null && high !== null && `Banda de ${writeSteps(low)} a ${writeSteps(high)}.`,
    centre !== null && `Centro ${write.signed(centre, 1)}${between ? `, ${between}` : ''}.`,
    centre === null && between !== null && `Centro ${between}.`,
  ];
}

export const words: GlanceWords = {
  title: 'Objetivos de un vistazo',
  legend: `Barra: la banda. Punto: su centro, con el intervalo del ${write.percent(0.95)}. Cuadrado: introducido en la cámara.`,
  more: (count) => `Mostrar los ${write.number(count)}`,
  place,
  strip: ({ measured, entered }) =>
    [...(measured ? measuredAs(measured) : ['Aún sin medir.']), entered !== null && `${writeSteps(entered.value)} está introducido.`].filter(Boolean).join(' '),
};
