// Spanish: a person's first holds.
import type { FirstHoldWords } from '../firstHoldWords.ts';

export const words: FirstHoldWords = {
  keys: {
    elsewhere: 'Las teclas van a la página: haga clic en el panel.',
    holdAtStake: 'Fin del tiempo, pero las teclas van a la página: haga clic en el panel.',
    back: 'Las teclas llegan otra vez al panel.',
  },
  asked: {
    short: '¿Ya ha parpadeado? Si es así, pulse otra vez. Si no, mantenga.',
    double: '¿Ha llegado tarde? Si es así, otras dos pulsaciones. Si no, mantenga.',
    long: '¿Está apagada? Si es así, otra pulsación larga. Si no, mantenga.',
    kept: (undoable) => `Toque para empezar y mantenga pulsado solo el botón de la cámara.${undoable ? ' Pulse dos veces para deshacer.' : ''}`,
  },
  keptDouble: 'pulsación larga y luego dos',
  coach: {
    label: 'Cómo es una prueba',
    camera: 'Mantenga el botón de la cámara a medias: enciende la luz de enfoque.',
    panel: 'Este pulsador informa al panel: toque al empezar y si la luz falla.',
    lights: 'Durante la prueba, fíjese en cuál de estas ve:',
    firstAloud: 'Toque el pulsador para empezar. Luego pulse a medias el botón de la cámara y manténgalo.',
    steps: {
      dialling: {
        now: 'Ponga este valor en la cámara.',
        press: 'Luego toque el pulsador, pulse a medias el botón de la cámara y manténgalo.',
        aloud: 'Póngalo, toque el pulsador, pulse a medias y mantenga.',
      },
      holding: {
        now: 'Mantenga a medias el botón de la cámara y mire la luz.',
        press: 'Pulse aquí solo si la luz falla:',
        aloud: null,
      },
      judging: {
        now: 'Fin del tiempo: suelte el botón de la cámara.',
        press: 'Toque el pulsador si la luz siguió encendida. Manténgalo un momento si la luz falló.',
        aloud: 'Toque si la luz siguió encendida. Pulsación larga si falló.',
      },
    },
  },
  lights: {
    title: 'Qué puede hacer la luz',
    open: 'Las cuatro luces',
    close: 'Cerrar las cuatro luces',
    does: { steady: 'Se enciende al momento y no se apaga.', late: 'Se enciende tarde.', flicker: 'Se apaga, aunque sea una vez.', dark: 'No se enciende.' },
    when: { steady: 'tras el tono', late: 'en la prueba', flicker: 'en la prueba', dark: 'en la prueba' },
    after: 'después',
  },
  arrows: {
    title: 'Qué pueden hacer las flechas',
    does: { left: 'Solo la izquierda.', right: 'Solo la derecha.', balanced: 'Las dos, iguales.', lopsided: 'Las dos, desiguales.' },
    counts: { in: 'una luz fija cuenta como dentro', out: 'incluso una luz fija cuenta como fuera' },
  },
};
