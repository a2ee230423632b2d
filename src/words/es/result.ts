// Spanish: what came out of a sweep and what to do about it.
import type { CarriedOutcome } from '../../sweep/end/outcome.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { line } from '../line.ts';
import type { ResultWords } from '../resultWords.ts';
import { factRevealed } from './revealed.ts';
import { write } from './write.ts';

const HOLDS = { one: '# prueba', other: '# pruebas' };

const visible = (end: Steps | null): string => (end === null ? 'sin luz fija con ningún valor' : `luz fija de ${writeSteps(end)} hasta el límite`);

function service({ chosen, centre, inside }: CarriedOutcome): string {
  const past = `El centro está hacia ${write.signed(centre, 1)}, más allá de ${writeSteps(chosen)}, la última corrección de este cuerpo.`;
  return inside ? `${past} Allí la luz aún está fija.` : `${past} La luz no está fija con ninguna corrección.`;
}

const FOCUS = 'Vuelva a enfocar en la vista en vivo, con la imagen ampliada y a la abertura máxima, y ponga el objetivo en manual sin tocar el anillo.';
const OTHER = 'Compruebe que en el cuerpo no haya puesta otra corrección, por ejemplo una para todos los objetivos.';
const SERVICE = 'Si vuelve a salir lo mismo, el conjunto necesita el servicio técnico del fabricante.';

export const words: ResultWords = {
  region: 'Resultado',
  placed: (found, within) => `desviado a propósito desde ${writeSteps(found)}, que tiene ${write.chance(within)} de confianza, ±1\u00a0paso`,
  between: (value, other) =>
    `El centro está entre ${writeSteps(value)} y ${writeSteps(other)}, y las pruebas no prefieren ninguno. ${writeSteps(value)} está más cerca de cero.`,
  headline: {
    'past the limit': 'Pasa del límite',
    'beyond the scale': 'Fuera de rango',
    nothing: 'Sin luz fija',
    'no hold': 'Ninguna prueba',
    service: 'Necesita taller',
  },
  noHold: 'Sin ninguna prueba no hay valor que introducir.',
  service,
  facts: {
    centre: 'Centro',
    place: (at) => write.signed(at, 1),
    band: 'Banda',
    range: (low, high) => (low === high ? writeSteps(low) : `de ${writeSteps(low)} a ${writeSteps(high)}`),
    endsNotSeen: 'los extremos no se probaron por ambos lados',
    seenInFocus: 'Visto con el enfoque nítido',
    visible,
    halfWidth: 'Mitad del ancho',
    width: (half, from, to) => `${write.number(half, 1)}, entre ${write.number(from, 1)} y ${write.number(to, 1)}`,
    figures: 'Cifras',
    interval: `Intervalo del ${write.percent(0.95)}`,
    within: (from, to) => `de ${write.signed(from, 1)} a ${write.signed(to, 1)}`,
  },
  drawing: {
    said: (outcome, { min, max }) =>
      `Las correcciones de ${writeSteps(min)} a ${writeSteps(max)}: ${visible(outcome.visible)}, el centro hacia ${write.signed(outcome.centre, 1)}.`,
    held: 'fija',
    beyond: 'pasado el límite',
    lies: 'dónde está la banda',
    centre: `centro, ${write.percent(0.95)}`,
  },
  holds: {
    aside: 'Las pruebas con el enfoque desviado:',
    made: (count, time) => line([write.count(count, HOLDS), write.duration(time)]),
    spent: (count) =>
      write.count(count, {
        one: '# prueba se hizo antes de que se moviera el enfoque y no cuenta.',
        other: '# pruebas se hicieron antes de que se moviera el enfoque y no cuentan.',
      }),
  },
  next: {
    title: 'Qué hacer ahora',
    enter: (value) => `Introduzca ${writeSteps(value)} en la cámara para este objetivo y compruebe que estén activadas sus correcciones. Después márquelo.`,
    enterMeanwhile: (value) => `Hasta que pase por el servicio técnico, introduzca ${writeSteps(value)} en la cámara para este objetivo. Después márquelo.`,
    marked: (value) => `${writeSteps(value)} está marcado como introducido en la cámara.`,
    check:
      'Compruébelo con fotos: enfoque por el visor seis veces, desenfocando antes de cada toma hacia cerca y hacia lejos por turnos, y compárelas con una enfocada en la vista en vivo.',
    photographs: 'Comprobarlo con fotos',
    focusAgain: 'Vuelva a hacer el enfoque crítico en la vista en vivo. El anillo sigue desviado.',
    service:
      'Muestre la página para el taller a un servicio técnico autorizado por el fabricante. No desmonte el objetivo ni el cuerpo: un arreglo casero puede empeorarlos.',
    mark: 'Marcar como introducido',
    lens: 'Objetivo siguiente',
    plan: 'Seguir con el plan',
    otherwise: 'Otro valor, otra fecha o una nota',
    allTheSame: '¿Ha introducido un valor de todos modos?',
    takeMarkBack: 'Quitar la marca',
    backToSweep: 'Volver al barrido',
    presses: 'El pulsador ahora',
  },
  width: {
    workshop: 'Página para el taller',
    title: 'Hallar el centro por el ancho',
    why: 'La banda es igual de ancha esté donde esté el enfoque. Con el enfoque un poco desviado, toda la banda cae dentro del rango, y su ancho muestra dónde está el centro.',
    practice: 'La cámara de práctica gira sola su anillo y después muestra su banda verdadera.',
    steps: [
      'Deje la cámara, el objetivo y la diana como están.',
      'En la vista en vivo, gire un poco el anillo de enfoque, lo justo para perder la nitidez. Si era el sentido contrario, el panel lo dice.',
      'Haga el barrido como antes y no toque entretanto el anillo.',
      'Después vuelva a hacer el enfoque crítico.',
    ],
    measure: 'Medir el ancho',
  },
  // Common practice, no source.
  checks: {
    title: 'Qué comprobar',
    of: {
      'past the limit': [FOCUS, OTHER, SERVICE],
      'beyond the scale': [FOCUS, OTHER, SERVICE],
      nothing: [
        FOCUS,
        'Coloque la diana paralela al sensor, con luz uniforme y con más contraste que lo que la rodea.',
        'Compruebe que el punto activo esté sobre la diana y que el objetivo sea lo bastante luminoso para enfocar por el visor.',
        'Si el cuerpo enfoca con un botón trasero, es ese botón el que enciende la luz de enfoque, no la media pulsación.',
        'Compruebe que la luz que miraba sea la de enfoque y no la del bloqueo de exposición.',
      ],
    },
  },
  practice: { title: 'La cámara de práctica', revealed: factRevealed, pictures: 'Comprobarlo con fotos de práctica' },
};
