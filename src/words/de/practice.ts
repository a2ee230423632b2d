// German: the practice camera.
import type { PracticeWords } from '../practiceWords.ts';
import { write } from './write.ts';

const ARROWS = { none: [], left: ['Pfeil links'], right: ['Pfeil rechts'], both: ['Pfeil links', 'Pfeil rechts'] } as const;

export const words: PracticeWords = {
  title: 'Übungskamera',
  about:
    'Gehäuse und Objektiv sind simuliert, ihr Fokuslicht ist auf diesem Bildschirm. Schulen Sie das Auge, üben Sie Wörter und Taster. Am Ende zeigt die Kamera ihr wahres Band.',
  arrows: 'Mit Pfeilen neben dem Licht',
  past: 'Mit einem Band, das über den Korrektur\u00adbereich hinausreicht',
  odd: 'Etwas stimmt nicht mit ihr: Finden Sie heraus, was',
  begin: 'Üben',
  train: 'Auge schulen',
  pictures: 'Übungsbilder',
  light: (lit, arrows) => `Übungslicht: ${write.list([lit ? 'an' : 'dunkel', ...ARROWS[arrows]])}`,
};
