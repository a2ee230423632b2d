// Spanish: the practice camera.
import type { PracticeWords } from '../practiceWords.ts';
import { write } from './write.ts';

const ARROWS = { none: [], left: ['flecha izquierda'], right: ['flecha derecha'], both: ['flecha izquierda', 'flecha derecha'] } as const;

export const words: PracticeWords = {
  title: 'Cámara de práctica',
  about:
    'Un cuerpo y un objetivo simulados, con su luz de enfoque en esta pantalla. Ejercite la vista y practique las palabras y el pulsador. Al final muestra su banda verdadera.',
  arrows: 'Con flechas junto a la luz',
  past: 'Con una banda que se sale del rango de corrección',
  odd: 'Con algún defecto: descubra cuál',
  begin: 'Practicar',
  train: 'Ejercitar la vista',
  pictures: 'Fotos de práctica',
  light: (lit, arrows) => `Luz de práctica: ${write.list([lit ? 'encendida' : 'apagada', ...ARROWS[arrows]])}`,
};
