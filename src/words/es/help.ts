// Spanish: the help.
import type { HelpWords } from '../helpWords.ts';
import { correctionSaid, taught } from '../taught.ts';

export const words: HelpWords = {
  title: 'Ayuda',
  about:
    'El panel nombra un valor. Póngalo en la cámara, pulse a medias y mire la luz de enfoque durante toda la prueba. Diga lo que ha visto. ' +
    'El panel halla el punto medio de los valores con los que la luz está fija.',
  now: {
    title: 'Qué puede hacer ahora',
    start: 'Nombrar un objetivo y empezar',
    practice: 'Cámara de práctica',
    bench: 'Preparar el banco',
    goOn: 'Seguir con el barrido',
    watch: 'Mirar el barrido de la otra ventana',
  },
  lights: {
    title: 'Qué significa la luz',
    light: 'Luz',
    counts: 'Cuenta como',
    is: {
      steady: { seen: 'Encendida al momento, sin cortes', counts: 'dentro' },
      late: { seen: 'Se encendió tarde', counts: 'fuera, cerca' },
      flicker: { seen: 'Se apagó, aunque fuera una vez', counts: 'fuera' },
      dark: { seen: 'No se encendió', counts: 'fuera, lejos' },
      untold: { seen: 'Falló de algún modo', counts: 'fuera' },
    },
    note:
      'Un triángulo pequeño junto a una marca es una flecha del visor. Una luz fija con una sola flecha cuenta como fuera. ' +
      'Una luz solo cuenta como fija cuando la prueba ha durado todo su tiempo.',
  },
  spoken: {
    title: 'Palabras y teclas',
    say: 'Diga',
    means: 'Significa',
    key: 'Tecla',
    get set() {
      return `${taught('set')} ${correctionSaid(6)}`;
    },
    meanings: {
      solid: 'la luz estuvo fija',
      delayed: 'llegó tarde',
      flicker: 'parpadeó',
      nothing: 'no se encendió',
      left: 'flecha izquierda',
      right: 'flecha derecha',
      balanced: 'las dos flechas, iguales',
      lopsided: 'flechas desiguales',
      holding: 'empieza la prueba',
      undo: 'deshace lo último',
      repeat: 'repite lo dicho',
      pause: 'el barrido espera',
      resume: 'el barrido continúa',
      skip: 'salta este valor',
      accept: 'acepta lo que se ofrece',
      'go on': 'sigue probando antes de terminar',
      set: 'pone un valor a su elección',
      same: 'el enfoque está igual',
      shifted: 'el enfoque se ha movido',
      finish: 'termina el barrido como está',
      help: 'dice qué puede decir',
      'far view': 'llena el panel o vuelve a mostrarlo entero',
      entered: 'marca el valor como introducido',
      next: 'el objetivo o el paso siguiente',
      back: 'un paso atrás',
    },
    get together() {
      return `Puede decir juntas una luz y una flecha: «${taught('flicker')} ${taught('left')}».`;
    },
  },
  presses: {
    title: 'El pulsador',
    about: 'El pulsador es el botón grande. También lo son Espacio, Intro, Av Pág y Re Pág, y un pedal o un mando que envíe una de esas teclas.',
    how: {
      short: 'una pulsación',
      double: 'dos pulsaciones rápidas',
      long: 'una pulsación de más de medio segundo',
      'kept, double': 'una pulsación larga, que empieza una prueba, y luego dos rápidas',
    },
    when: {
      dialling: 'Al poner el valor',
      holding: 'Durante la prueba',
      judging: 'Después del tono final',
      offered: 'Cuando el panel ofrece terminar',
      paused: 'En pausa',
      checking: 'Cuando pregunta por el enfoque',
      turning: 'Cuando pide girar el anillo',
      finished: 'En el resultado',
    },
  },
  before: {
    title: 'Antes de empezar',
    steps: [
      'Coloque la diana paralela al sensor, con luz buena y uniforme.',
      'Enfoque con toda precisión en la vista en vivo, a la abertura máxima. Después ponga el objetivo en manual y no toque el anillo.',
      'Si el cuerpo enfoca con un botón trasero, mantenga ese botón en lugar de la media pulsación.',
    ],
    manual: 'Si el manual del fabricante de su cámara dice otra cosa, siga el manual.',
  },
};
