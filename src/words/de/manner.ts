// German: how carefully and in which order. The figures are those of simulated sweeps on a range of 41 corrections.
import type { MannerWords } from '../mannerWords.ts';

export const words: MannerWords = {
  care: 'Sorgfalt',
  cares: {
    quick: { label: 'Zügig', note: 'Endet, sobald die Mitte auf eine Stufe sicher ist. Etwa 9 Proben, anderthalb Minuten.' },
    standard: { label: 'Normal', note: 'Zeigt auch beide Enden des Bandes. Etwa 10 Proben, unter zwei Minuten.' },
    thorough: { label: 'Gründlich', note: 'Wiederholt die Werte an beiden Enden, bis sie sicher sind. Etwa 13 Proben, zwei Minuten.' },
  },
  order: 'Vorgehen',
  orders: {
    fewest: { label: 'Wenige Proben', note: 'Immer der Wert, dessen Probe am meisten verrät.' },
    outward: { label: 'Stufe für Stufe', note: 'Ein Wert nach dem anderen, von innen nach außen: Sie sehen, wie sich das Licht ändert. Braucht mehr Proben.' },
  },
};
