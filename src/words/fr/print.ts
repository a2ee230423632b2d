// French: the printed target and ramp, and the page that prints them.
import type { SheetLabels } from '../../optics/print/sheets.ts';
import type { PrintWords } from '../printWords.ts';
import { benchFault } from './benchFaults.ts';
import { pair } from './subject.ts';
import { write } from './write.ts';

const TRUE_SIZE = `Imprimez à ${write.percent(1)}, sans ajustement à la page`;

const sheetsOf = (name: string): SheetLabels => ({
  title: ({ number, of }) => (of === 1 ? name : `${name}, feuille ${write.number(number)} sur ${write.number(of)}`),
  foot: ({ number, of, row, column }) =>
    of === 1
      ? `${TRUE_SIZE}.`
      : `${TRUE_SIZE}. Feuille ${write.number(number)} sur ${write.number(of)} : rangée ${write.number(row)}, colonne ${write.number(column)}.`,
});

export const words: PrintWords = {
  whose: ({ lens, body, focalLength, distance: length, unit, day }) => [
    ...(lens && body ? [pair({ lens, body })] : [lens || body].filter(Boolean)),
    `${write.millimetres(focalLength)} à ${write.distance(length, unit)}, ${write.day(day)}`,
  ],
  sizes: (bar, scale) => `Barres de ${write.number(bar, 2)} mm. Échelle ci-dessous : ${write.number(scale)} mm.`,
  scale: (scale) => `${write.number(scale)} mm entre les bords extérieurs des traits d’extrémité`,
  ramp: 'Rampe : la ligne 0 est dans le plan de la mire, et le haut penche en arrière à 45°. Les nombres sont des millimètres. + est derrière la mire.',
  depth: (depth) => write.signed(depth, 2),
  sheets: { target: sheetsOf('Mire'), ramp: sheetsOf('Rampe') },
  page: {
    title: 'Mire à imprimer',
    paper: 'Papier',
    papers: { A4: 'A4', Letter: 'Letter' },
    drawn: (sheets) =>
      `${write.count(sheets, {
        one: 'La mire tient sur une feuille, et la rampe est sur la dernière.',
        other: 'La mire tient sur # feuilles, à assembler par leurs repères, et la rampe est sur la dernière.',
      })} ${TRUE_SIZE}, sans marges ni en-têtes. Mesurez ensuite l’échelle avec une règle. Ne couvrez pas les carrés à pastilles : ils servent à mesurer les photos de l’impression.`,
    noOrder: 'Cette page ne sait pas quelle mire dessiner. Ouvrez-la depuis le banc, dans le panneau.',
    fault: benchFault,
  },
};
