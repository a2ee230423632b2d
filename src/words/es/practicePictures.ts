// Spanish: pictures that the practice camera takes.
import type { PracticePicturesWords } from '../practicePicturesWords.ts';
import { write } from './write.ts';

const STANDS = `Está a dos metros de la diana y la rampa, con 85\u00a0mm a f/${write.number(1.8, 1)}.`;

export const words: PracticePicturesWords = {
  title: 'Fotos de práctica',
  simulated: 'Simuladas: la cámara de práctica dibuja estas fotos. No dicen nada de su propia cámara, y nada de ellas se guarda.',
  about: {
    one: `La cámara de práctica toma una foto con enfoque automático y este valor. ${STANDS}`,
    check: `La cámara de práctica toma una foto en la vista en vivo y después seis con enfoque automático y este valor. ${STANDS}`,
    bracket: `La cámara de práctica toma una foto en la vista en vivo y después una con cada valor del horquillado. ${STANDS}`,
  },
  take: { one: 'Tomar una foto', check: 'Tomar las fotos', bracket: 'Tomar las fotos' },
  picture: (number) => `Foto de práctica ${write.number(number)}`,
  another: 'Otra cámara de práctica',
  truth: {
    title: 'Cómo es de verdad esta cámara de práctica',
    told: (centre, step) => `Su centro verdadero es ${write.signed(centre, 1)}. Un paso mueve el enfoque ${write.unit(step, 'millimeter', 1)} en la diana.`,
  },
};
