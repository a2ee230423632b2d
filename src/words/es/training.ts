// Spanish: the trainer.
import { countedRight, namedRight, type TrainingHold, type TrainingLight } from '../../practice/training/round.ts';
import { RELIABLE, type Confusion } from '../../practice/training/score.ts';
import { taught } from '../taught.ts';
import type { TrainingWords } from '../trainingWords.ts';
import { write } from './write.ts';

type Slip = Exclude<keyof Confusion, 'right' | 'of'>;

const WAS: Readonly<Record<TrainingLight, string>> = {
  steady: 'Estuvo fija.',
  late: 'Llegó tarde.',
  flicker: 'Parpadeó.',
  dark: 'No se encendió.',
};

/** The costly ones first. */
const SLIPS: Readonly<Record<Slip, string>> = {
  lateAsSteady: 'Tardía, respondida como fija',
  flickerAsSteady: 'Parpadeante, respondida como fija',
  darkAsSteady: 'Apagada, respondida como fija',
  steadyAsFailing: 'Fija, respondida como fallida',
  wrongKind: 'Fallida, respondida como de otro tipo',
};

/** Of two that come as often, the one that can be unlearned best. */
const WATCH_FOR: Readonly<Record<Slip, () => string>> = {
  lateAsSteady: () => 'Mire la luz antes de pulsar. Una luz tardía está apagada en el primer momento.',
  flickerAsSteady: () => 'No aparte la vista de la luz hasta el fin del tiempo. Un solo corte breve es un parpadeo.',
  steadyAsFailing: () => 'Diga que falló solo si la vio fallar. Su propio parpadeo parece un corte.',
  wrongKind: () =>
    `Primero apagada y luego encendida: «${taught('delayed')}». Encendida y luego un corte: «${taught('flicker')}». Nunca encendida: «${taught('nothing')}».`,
  darkAsSteady: () => `Para una luz que no se encendió, diga «${taught('nothing')}».`,
};

const keysOf = <Value>(record: Readonly<Record<Slip, Value>>): readonly Slip[] => Object.keys(record) as Slip[];

function counts(hold: TrainingHold): string {
  if (namedRight(hold)) return 'Bien.';
  if (!countedRight(hold)) return 'No.';
  return hold.told === 'untold' ? 'Bien: falló.' : 'Bien: falló, pero de otro modo.';
}

export const words: TrainingWords = {
  title: 'Ejercitar la vista',
  about:
    'Diez pruebas de dos segundos con la luz de práctica. Responda a cada una como en un barrido: con la voz, las teclas, el puntero o el pulsador. ' +
    'Tras dos aciertos seguidos, las luces tardías y parpadeantes son más difíciles de ver. Tras un error, más fáciles.',
  begin: 'Empezar una ronda',
  another: 'Otra ronda',
  hold: {
    label: 'Prueba de entrenamiento',
    title: (number, of) => `Prueba ${write.number(number)} de ${write.number(of)}`,
    answers: 'Respuestas que valen ahora',
    ready: 'Pulse cuando quiera empezar.',
    watch: 'Mire la luz.',
    over: 'Fin del tiempo. ¿Qué ha visto?',
    tooSoon: 'Aún no. Mantenga hasta el fin del tiempo.',
    was: (hold) => `${counts(hold)} ${WAS[hold.shown]}`,
  },
  round: {
    label: 'Esta ronda',
    right: ({ right, of }) => `${write.number(right)} de ${write.number(of)} bien`,
    slips: (confusion) =>
      keysOf(SLIPS)
        .filter((slip) => confusion[slip].missed > 0)
        .map((slip) => `${SLIPS[slip]}: ${write.number(confusion[slip].missed)} de ${write.number(confusion[slip].shown)}.`),
    watchFor(confusion) {
      const [worst] = keysOf(WATCH_FOR).toSorted((a, b) => confusion[b].missed - confusion[a].missed);
      return worst && confusion[worst].missed > 0 ? WATCH_FOR[worst]() : 'Ningún error en esta ronda.';
    },
    level: (level, last) => `Está en el nivel ${write.number(level)} de ${write.number(last)}.`,
  },
  standing: {
    title: 'Su fiabilidad',
    reliability: ({ right, of, low, high, reached }) => [
      `${write.number(right)} de ${write.count(of, { one: '# prueba clara acertada', other: '# pruebas claras acertadas' })}.`,
      `Así, acierta entre el ${write.percent(Math.floor(low * 100) / 100)} y el ${write.percent(Math.ceil(high * 100) / 100)} de sus pruebas, con un ${write.percent(0.95)} de confianza.`,
      reached ? 'Es suficiente para un barrido.' : `Para un barrido, la cifra menor debe llegar al ${write.percent(RELIABLE)}.`,
    ],
    kept: (rounds, newest) => [
      `${write.count(rounds, { one: '# ronda guardada', other: '# rondas guardadas' })}, la última del ${write.day(newest)}.`,
      'Cuentan las ocho últimas y, de ellas, solo las luces que se ven con claridad.',
    ],
    tooFew: (enough, sofar) =>
      `Con ${write.count(enough, { one: '# prueba clara', other: '# pruebas claras' })}, un barrido puede tener en cuenta los errores que usted comete. Hasta ahora hay ${write.number(sofar)}.`,
    own: {
      label: 'Usar mi propia fiabilidad',
      note: (lapse) =>
        `Desde el barrido siguiente, cuenta con un ${write.percent(lapse, 1)} de pruebas malogradas por usted en lugar del ${write.percent(0.02)} habitual.`,
    },
    forget: 'Olvidar mis rondas',
    forgetNow: 'Olvidarlas',
    keep: 'Conservarlas',
  },
};
