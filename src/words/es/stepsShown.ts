// Spanish: each step of the set-up walk as it is shown, in a few short sentences.
import { writeSteps } from '../../sweep/scale.ts';
import type { Each } from '../setUpWords.ts';
import { write } from './write.ts';

export const SHOWN: Each = {
  practice: () => 'Con la cámara de práctica no hay nada que montar. Mire la luz de la pantalla como miraría la de enfoque.',
  'old value': () => 'Indique la corrección que la cámara tiene guardada para este cuerpo y este objetivo. Así siempre podrá volver a ella.',
  tripod: () =>
    'Ponga la cámara en un trípode firme y apriete todos sus bloqueos. Use un disparador remoto para las fotos y, si tiene media pulsación, también para las pruebas.',
  converter: ({ factor }) =>
    `Monte el convertidor de ${write.number(factor, 2)}\u00d7 entre el cuerpo y el objetivo. El valor solo es correcto con este convertidor.`,
  zoom: ({ focalLength }) => `Ponga el anillo del zoom en ${write.millimetres(focalLength)} y déjelo ahí.`,
  target: () => 'Fije la diana plana en un tablero o una pared firmes y verticales. Su marca central queda a la altura del centro del objetivo.',
  print: () => 'Mida la escala impresa entre los bordes exteriores de sus marcas finales e indique la longitud.',
  distance: ({ distance: length, from, unit }) =>
    `Ponga la diana a ${write.distance(length, unit)} desde ${from === 'film plane' ? 'la marca del plano focal del cuerpo' : 'el frente del objetivo'}. Indique la distancia que ha medido.`,
  light: () => 'Ilumine la diana por igual desde ambos lados y sin reflejos. Indique el ISO, la abertura y la obturación que muestra la cámara.',
  square: ({ by }) =>
    ({
      mirror:
        'Apoye un espejo pequeño en el centro de la diana. Gire la diana hasta que el objetivo se vea en el centro de la vista en vivo. Indique a qué distancia del centro se queda.',
      sides: 'Mida en la vista en vivo los cuatro lados entre las marcas de las esquinas e indíquelos. Gire la diana como diga el panel.',
      spot: 'Sin ningún ojo en el visor, envíe el punto de luz desde junto al objetivo al espejo. Gire la diana hasta que vuelva a su origen. Indique a qué distancia se queda.',
    })[by],
  stabiliser: ({ at }) =>
    ({
      both: 'Desconecte el estabilizador del objetivo y el del cuerpo. Sobre un trípode mueven la imagen.',
      lens: 'Desconecte el estabilizador del objetivo. Sobre un trípode mueve la imagen.',
      body: 'Desconecte el estabilizador del cuerpo. Sobre un trípode mueve la imagen.',
    })[at],
  'centre point': () => 'Elija solo el punto central de enfoque y el enfoque automático sencillo. Ponga el punto sobre la marca central.',
  aperture: ({ aperture }) => `Elija prioridad a la abertura o exposición manual, y la abertura máxima, f/${write.number(aperture, 1)}.`,
  'focus button': () => 'Este cuerpo enfoca con un botón trasero. Mantenga ese botón, y no la media pulsación, siempre que el panel diga que pulse.',
  temperature: () => 'Deje la cámara y el objetivo en la sala al menos media hora, hasta que tomen su temperatura. Indíquela si la conoce.',
  'start value': ({ start }) => `Active la corrección solo para este objetivo y póngala en\u00a0${writeSteps(start)}.`,
  'critical focus': ({ by }) =>
    by === 'live view'
      ? 'En la vista en vivo, con la máxima ampliación y la abertura máxima, vaya con el anillo más allá del punto más nítido y vuelva a él. Tres veces en el mismo sitio: ese es el enfoque crítico.'
      : 'Fotografíe la diana moviendo cada vez el anillo lo mínimo. Compare a tamaño completo y vuelva a la más nítida. Dos veces en el mismo sitio: ese es el enfoque crítico.',
  magnification: () => 'Fotografíe la diana. Cuente los píxeles que ocupa su escala a tamaño completo e indíquelos. Dan la ampliación real.',
  'hold focus': ({ at }) =>
    at === 'body'
      ? 'Ponga el enfoque en manual en el cuerpo, para no tocar el objetivo. Desde ahora, no toque el anillo.'
      : 'Ponga en manual el interruptor del objetivo sin girar el anillo. Sujete el anillo con cinta que no deje restos y revise otra vez el enfoque.',
  viewfinder: ({ leaves }) =>
    leaves === 'live view'
      ? 'Salga de la vista en vivo y mire por el visor. Ajuste el ocular si no ve clara la luz de enfoque.'
      : 'Mire por el visor. Ajuste el ocular si no ve clara la luz de enfoque.',
};
