// Spanish: each step of the set-up walk as it is spoken, in one short sentence.
import { sayCorrection } from '../../hearing/languages/es/sayCorrection.ts';
import { FROM } from './lengths.ts';
import type { Each } from '../setUpWords.ts';
import { write } from './write.ts';

export const SPOKEN: Each = {
  practice: () => 'La cámara de práctica no requiere montaje: mire la luz de la pantalla.',
  'old value': () => 'Anote la corrección guardada ahora.',
  tripod: () => 'Cámara en un trípode firme, con disparador remoto.',
  converter: ({ factor }) => `Monte el convertidor de ${write.number(factor, 2)} aumentos.`,
  zoom: ({ focalLength }) => `Zoom a ${write.number(focalLength)} milímetros.`,
  target: () => 'Fije la diana plana, con su centro a la altura del objetivo.',
  print: () => 'Mida la escala impresa.',
  distance: ({ distance: length, from, unit }) => `Diana a ${write.distance(length, unit)} desde ${FROM[from]}.`,
  light: () => 'Ilumine la diana por igual y lea la exposición.',
  square: ({ by }) =>
    ({
      mirror: 'Alinee la diana usando el espejo.',
      sides: 'Alinee la diana por sus cuatro lados.',
      spot: 'Alinee la diana usando el punto de luz.',
    })[by],
  stabiliser: () => 'Estabilizador desconectado.',
  'centre point': () => 'Punto central, enfoque automático sencillo.',
  aperture: ({ aperture }) => `Abertura máxima, f ${write.number(aperture, 1)}.`,
  'focus button': () => 'En las pruebas, use su botón de enfoque.',
  temperature: () => 'Espere a que el equipo tome la temperatura de la sala.',
  'start value': ({ start }) => `Corrección activada para este objetivo, puesta en ${sayCorrection(start)}.`,
  'critical focus': ({ by }) => (by === 'live view' ? 'Enfoque en la vista en vivo, con la máxima ampliación.' : 'Busque el enfoque más nítido con fotos.'),
  magnification: () => 'Fotografíe la escala y cuente sus píxeles.',
  'hold focus': ({ at }) => (at === 'body' ? 'Enfoque manual en el cuerpo, sin tocar el anillo.' : 'Enfoque manual en el objetivo, sin tocar el anillo.'),
  viewfinder: ({ leaves }) => (leaves === 'live view' ? 'Salga de la vista en vivo y mire por el visor.' : 'Mire por el visor.'),
};
