// Spanish: the hearing check.
import type { HearingWords } from '../hearingWords.ts';
import { taught, vocabulary } from '../taught.ts';
import { NO_MICROPHONE } from './microphone.ts';
import { write } from './write.ts';

/** What is said after the word for setting or for asking: digits one by one, as they are understood. */
const digits = (...figures: readonly number[]): string => figures.map((figure) => vocabulary().numbers.say(figure)).join(' ');

const asking = (): string => vocabulary().question.openings[0];

export const words: HearingWords = {
  title: 'Prueba de escucha',
  stays: 'El sonido se compara en este dispositivo. Nunca se guarda ni se envía.',
  kept:
    'De cada palabra enseñada se guarda solo un patrón, que no se puede volver a oír. Queda en este navegador y en las copias de seguridad ' +
    'que usted haga.',
  room: {
    title: 'La sala',
    level: 'Nivel',
    listen: 'Escuchar',
    toListen: 'Pulse el botón. El navegador pregunta entonces si Sweepbook puede usar el micrófono.',
    refused: {
      ...NO_MICROPHONE,
      'not asked': 'El micrófono aún no está permitido. Pulse el botón y responda que lo permite.',
      blocked: 'El micrófono está bloqueado para Sweepbook. Permítalo desde el icono que está junto a la dirección y pulse otra vez el botón.',
    },
    stand: 'Póngase donde va a trabajar y diga una palabra.',
    noSound: 'Este navegador no puede entregar el sonido del micrófono, así que aquí no se pueden enseñar palabras.',
    gone: 'El micrófono se ha desconectado. Conéctelo y pulse otra vez el botón.',
    muted: 'El micrófono está silenciado. Actívelo en el propio micrófono o en los ajustes de sonido del sistema.',
  },
  heard: {
    noWord: 'Se ha oído algo, pero ninguna palabra enseñada.',
    word: (word) => `Se oyó «${word}».`,
    perhaps: (word) => `Quizá «${word}». El panel preguntaría si la ha dicho.`,
  },
  own: {
    title: 'Sus palabras',
    about: (takes) => [
      `Cada palabra se dice ${write.count(takes, { one: 'una vez', other: '# veces' })}.`,
      'Para empezar bastan las siete palabras de un barrido. Lo que no esté enseñado se hace con las teclas, el pedal o el puntero.',
    ],
    learns: 'El panel también puede aprender de las palabras acertadas. Actívelo en los ajustes, en «Voz».',
    group: (left, of) =>
      left === of
        ? write.count(of, { one: 'Enseñar esta palabra', other: 'Enseñar estas # palabras' })
        : write.count(left, { one: 'Enseñar la que falta', other: 'Enseñar las # que faltan' }),
    teach: (word) => `Enseñar «${word}»`,
    again: (word) => `Enseñar «${word}» otra vez`,
    short: { teach: 'Enseñar', again: 'Repetir' },
    is: {
      notTaught: 'sin enseñar',
      taught: 'enseñada',
      learned: (more) => write.count(more, { one: 'enseñada, y # aprendida', other: 'enseñada, y # aprendidas' }),
    },
    forgetLearned: 'Olvidar lo aprendido, conservar lo enseñado',
    learnedForgotten: 'Lo aprendido está olvidado. Lo que usted enseñó sigue ahí.',
    erase: 'Borrar todo lo que he enseñado',
    erased: 'Todo lo que enseñó está borrado.',
    rooms: { sweep: 'Un barrido', walk: 'El montaje', logbook: 'El cuaderno', rest: 'Lo demás' },
    of: (done, all) => (done === all ? `las ${write.number(all)} enseñadas` : `${write.number(done)} de ${write.number(all)} enseñadas`),
    get groups() {
      return {
        sweep: { name: 'Un barrido', for: 'Basta para un barrido entero, de la primera prueba al valor aceptado.' },
        walk: { name: 'El montaje', for: `Para el montaje guiado. Con «${taught('repeat')}» también se oye otra vez un valor.` },
        arrows: { name: 'Flechas', for: 'Para cuerpos que muestran flechas junto a la luz de enfoque.' },
        values: {
          name: 'Valores y cuaderno',
          for:
            `Poner un valor a su elección, «${taught('set')} ${vocabulary().signs.minus[0]} ${digits(1, 2)}», ` +
            `y preguntar al cuaderno, «${asking()} ${digits(8, 5)}».`,
        },
        rest: { name: 'Otras palabras', for: 'Pausar, saltar, continuar y lo demás que puede pedir un barrido.' },
        lenses: { name: 'Sus objetivos', for: `Preguntar al cuaderno por un objetivo: diga «${asking()}» y su nombre.` },
      };
    },
  },
  lesson: {
    say: (word) => `Diga «${word}»`,
    takes: (done, of) => `${write.number(done)} de ${write.number(of)}`,
    begin: 'Dígalo como lo dirá junto a la cámara, con silencio antes y después.',
    taught: (word) => `«${word}» ya está enseñada.`,
    allTaught: 'La lección está terminada. Vuelva al panel. Abajo hay más palabras que enseñar.',
    stop: 'Parar',
  },
};
