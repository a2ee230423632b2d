// Spanish: the printed target and ramp, and the page that prints them.
import type { SheetLabels } from '../../optics/print/sheets.ts';
import type { PrintWords } from '../printWords.ts';
import { benchFault } from './benchFaults.ts';
import { pair } from './subject.ts';
import { write } from './write.ts';

const AS_DRAWN = `Imprimir al ${write.percent(1)}, sin ajustar a la página.`;

const sheetsOf = (name: string): SheetLabels => ({
  title: ({ number, of }) => (of === 1 ? name : `${name}, hoja ${write.number(number)} de ${write.number(of)}`),
  foot: ({ number, of, row, column }) =>
    of === 1 ? AS_DRAWN : `${AS_DRAWN} Hoja ${write.number(number)} de ${write.number(of)}: fila ${write.number(row)}, columna ${write.number(column)}.`,
});

export const words: PrintWords = {
  whose: ({ lens, body, focalLength, distance: length, unit, day }) => [
    ...(lens && body ? [pair({ lens, body })] : [lens || body].filter(Boolean)),
    `${write.millimetres(focalLength)} a ${write.distance(length, unit)}, ${write.day(day)}`,
  ],
  sizes: (bar, scale) => `Barras ${write.number(bar, 2)}\u00a0mm. Escala de abajo: ${write.number(scale)}\u00a0mm.`,
  scale: (scale) => `${write.number(scale)}\u00a0mm entre los bordes exteriores de las marcas finales`,
  ramp: 'Rampa: la línea 0 está en el plano de la diana, y la parte alta se inclina 45° hacia atrás. Números en milímetros. + es detrás de la diana.',
  depth: (depth) => write.signed(depth, 2),
  sheets: { target: sheetsOf('Diana'), ramp: sheetsOf('Rampa') },
  page: {
    title: 'Diana para imprimir',
    paper: 'Papel',
    papers: { A4: 'A4', Letter: 'Carta' },
    drawn: (sheets) =>
      `${write.count(sheets, {
        one: 'La diana está en una hoja; la rampa, en la última.',
        other: 'La diana está en # hojas, que se unen por sus marcas; la rampa, en la última.',
      })} Imprima al ${write.percent(1)}, sin ajustar a la página, sin márgenes ni encabezados. Después mida la escala con una regla. No tape los cuadrados con puntos: con ellos se miden las fotos de las hojas.`,
    noOrder: 'Esta página no sabe qué diana dibujar. Ábrala desde el banco, en el panel.',
    fault: benchFault,
  },
};
