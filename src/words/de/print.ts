// German: the printed target and ramp, and the page that prints them.
import type { SheetLabels } from '../../optics/print/sheets.ts';
import type { PrintWords } from '../printWords.ts';
import { benchFault } from './benchFaults.ts';
import { pair } from './subject.ts';
import { write } from './write.ts';

const UNSCALED = 'Mit 100\u00a0% drucken, nicht an die Seite anpassen';

const sheetsOf = (name: string): SheetLabels => ({
  title: ({ number, of }) => (of === 1 ? name : `${name}, Blatt ${write.number(number)} von ${write.number(of)}`),
  foot: ({ number, of, row, column }) =>
    of === 1
      ? `${UNSCALED}.`
      : `${UNSCALED}. Blatt ${write.number(number)} von ${write.number(of)}: Reihe ${write.number(row)}, Spalte ${write.number(column)}.`,
});

export const words: PrintWords = {
  whose: ({ lens, body, focalLength, distance: length, unit, day }) => [
    ...(lens && body ? [pair({ lens, body })] : [lens || body].filter(Boolean)),
    `${write.millimetres(focalLength)} auf ${write.distance(length, unit)}, ${write.day(day)}`,
  ],
  sizes: (bar, scale) => `Balken ${write.number(bar, 2)}\u00a0mm. Skala unten: ${write.number(scale)}\u00a0mm.`,
  scale: (scale) => `${write.number(scale)}\u00a0mm zwischen den Außenkanten der Endmarken`,
  ramp: 'Rampe: Die Linie 0 liegt in der Ebene der Tafel, das obere Ende lehnt um 45° nach hinten. Die Zahlen sind Millimeter. + liegt hinter der Tafel.',
  depth: (depth) => write.signed(depth, 2),
  sheets: { target: sheetsOf('Testtafel'), ramp: sheetsOf('Rampe') },
  page: {
    title: 'Testtafel zum Drucken',
    paper: 'Papier',
    papers: { A4: 'A4', Letter: 'Letter' },
    drawn: (sheets) =>
      `${write.count(sheets, {
        one: 'Die Tafel ist auf einem Blatt, die Rampe auf dem letzten.',
        other: 'Die Tafel ist auf # Blättern, die an ihren Marken zusammengesetzt werden, die Rampe auf dem letzten.',
      })} ${UNSCALED}, ohne Ränder und Kopfzeilen. Dann die Skala mit einem Lineal nachmessen. Die Quadrate mit Punkten nicht verdecken: An ihnen werden Aufnahmen der Ausdrucke gemessen.`,
    noOrder: 'Diese Seite weiß nicht, welche Tafel sie zeichnen soll. Öffnen Sie sie am Messplatz in der Seitenleiste.',
    fault: benchFault,
  },
};
