// Spanish: whatever a sweep says.
import type { NotNow, Prompt } from '../../sweep/effect.ts';
import type { Outcome } from '../../sweep/end/outcome.ts';
import type { Rival } from '../../sweep/end/story.ts';
import type { Hold } from '../../sweep/hold.ts';
import type { Suggestion } from '../../sweep/next/suggestion.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { TurnWay } from '../../sweep/transfer/turning.ts';
import type { Trouble } from '../../sweep/trouble/trouble.ts';
import type { Steps } from '../../units.ts';
import { sayCorrection, sayNumber } from '../../hearing/languages/es/sayCorrection.ts';
import type { InWords } from '../inWords.ts';
import type { SpokenWords } from '../spokenWords.ts';
import { taught } from '../taught.ts';
import { drifted } from './drift.ts';
import { outcome } from './outcomes.ts';
import { reason, startAloud } from './reasons.ts';
import { capital } from '../run.ts';
import { sentences, together } from './sentence.ts';
import { TROUBLE_SAID } from './troubleSaid.ts';
import { readBack } from './verdict.ts';
import { write } from './write.ts';

const both = (text: string): InWords => ({ spoken: text, written: text });

/** "¿Intacto o movido?", in the words to say. */
const sameOrShifted = (): string => `¿${capital(taught('same'))} o ${taught('shifted')}?`;

function prompt(one: Prompt): InWords {
  switch (one.say) {
    case 'opening': {
      const start = startAloud(one.next);
      const value = `ponga ${sayCorrection(one.next.value)}`;
      return { spoken: sentences(start === null ? value : `${value}, ${start}`), written: set(one.next) };
    }
    case 'next':
      return next(together(noted(one.noted), found(one.trouble)), one.next);
    case 'too early':
      return tooEarly(Math.max(1, Math.ceil(one.left)));
    case 'did it hold':
      return { spoken: '¿Estuvo fija?', written: `Fin del tiempo con ${writeSteps(one.value)}. ¿Estuvo fija la luz?` };
    case 'hold again':
      return holdAgain(one.value, one.why);
    case 'offer': {
      const { spoken, written } = one.trouble ? both(TROUBLE_SAID[one.trouble.trouble]) : outcome(one.outcome);
      const look = one.look && !one.trouble ? '¿Sigue nítida la vista en vivo?' : null;
      return { spoken: together(noted(one.noted), spoken, look, '¿Acepta?'), written: together(noted(one.noted), written, look, '¿Lo acepta o continúa?') };
    }
    case 'check focus': {
      const before = together(noted(one.noted), found(one.trouble));
      return {
        spoken: together(before, DISAGREE[one.rival ?? 'none'], 'Revise el enfoque en la vista en vivo.', sameOrShifted()),
        written: together(before, drifted(one.drift, one.rival), 'Mire la vista en vivo: ¿está igual o se ha movido?'),
      };
    }
    case 'turn the focus': {
      const turn = one.practice ? 'La cámara de práctica gira sola su anillo.' : TURN[one.way];
      return {
        spoken: together(noted(one.noted), turn, `Después diga ${taught('shifted')}.`),
        written: together(noted(one.noted), turn, `Después diga «${taught('shifted')}».`),
      };
    }
    case 'fresh series':
      return next('Serie nueva.', one.next);
    case 'undone':
      return next('Deshecho.', one.next);
    case 'nothing to undo':
      return both('No hay nada que deshacer.');
    case 'paused':
      return both('En pausa.');
    case 'outcome':
      return one.trouble ? both(`${TROUBLE_SAID[one.trouble.trouble]} Vea qué comprobar.`) : afterwards(one.outcome, one.practice);
    case 'not now':
      return notNow(one.why);
  }
}

const noted = (hold: Hold | null): string | null => hold && sentences(readBack(hold.verdict));
const found = (trouble: Trouble | undefined): string | null => (trouble ? TROUBLE_SAID[trouble.trouble] : null);
const set = (suggested: Suggestion): string => `Ponga ${writeSteps(suggested.value)}: ${reason(suggested)}.`;

const next = (before: string, suggested: Suggestion): InWords => ({
  spoken: together(before, sentences(sayCorrection(suggested.value))),
  written: together(before, set(suggested)),
});

/** A value is to be entered, and said to be. After a width transfer the focus still stands aside. */
function afterwards(one: Outcome, practice: boolean): InWords {
  const words = outcome(one);
  if (one.found === 'carried over') return { ...words, spoken: `${words.spoken} Ahora vuelva a enfocar en la vista en vivo.` };
  if (one.found !== 'band' || practice) return words;
  return { ...words, spoken: `Introduzca ${sayCorrection(one.chosen)} y diga ${taught('entered')}.` };
}

const tooEarly = (left: number): InWords => ({
  spoken: left === 1 ? 'Un segundo más.' : sentences(`${sayNumber(left)} segundos más`),
  written: `Aún no: mantenga ${write.count(left, { one: '# segundo más', other: '# segundos más' })}.`,
});

function holdAgain(value: Steps, why: 'unanswered' | 'cut off'): InWords {
  const because = why === 'unanswered' ? 'No hubo respuesta, así que la prueba no cuenta.' : 'La prueba se interrumpió, así que no cuenta.';
  return { spoken: sentences('otra vez', sayCorrection(value)), written: `${because} Ponga ${writeSteps(value)} y repita la prueba.` };
}

/** Where two stories fit, both are said. */
const DISAGREE: Readonly<Record<Rival | 'none', string>> = {
  none: 'Las pruebas no concuerdan.',
  drifting: 'Las pruebas no concuerdan: se movió el enfoque o se desplaza la banda.',
  play: 'Las pruebas no concuerdan: se movió el enfoque o influye el sentido.',
};

const TURN: Readonly<Record<TurnWay, string>> = {
  first: 'En la vista en vivo, gire un poco el anillo de enfoque, lo justo para perder la nitidez.',
  further: 'Ese es el sentido. Gire un poco más.',
  'other way': 'Sentido contrario. Vuelva atrás, pasando por el punto nítido.',
  back: 'Demasiado. Retroceda la mitad.',
};

function notNow(why: NotNow): InWords {
  switch (why) {
    case 'hold first':
      return { spoken: 'Primero, la prueba.', written: 'No hay ninguna prueba en curso. Empiece antes una.' };
    case 'hold under way':
      return { spoken: 'Prueba en curso.', written: 'Hay una prueba en curso. Responda o deshágala antes.' };
    case 'answer first':
      return { spoken: '¿Estuvo fija?', written: 'Diga antes qué hizo la luz.' };
    case 'off the scale':
      return { spoken: 'Fuera de rango.', written: 'Este cuerpo no tiene esa corrección. Elija una de su rango.' };
    case 'paused':
      return { spoken: 'En pausa.', written: 'El barrido está en pausa. Reanúdelo antes.' };
    case 'not paused':
      return { spoken: 'No hay pausa.', written: 'El barrido no está en pausa.' };
    case 'finished':
      return { spoken: 'Terminado.', written: 'El barrido está terminado. Deshacer anula el final.' };
    case 'no arrows':
      return {
        spoken: 'Este cuerpo no tiene flechas.',
        written: 'En el equipo consta que este cuerpo no muestra flechas. Si las muestra, cámbielo allí.',
      };
    case 'check focus first':
      return { spoken: sameOrShifted(), written: 'Mire antes el enfoque en la vista en vivo: ¿está igual o se ha movido?' };
    case 'turn first':
      return {
        spoken: `¿${capital(taught('shifted'))}?`,
        written: `Gire antes el anillo en la vista en vivo. Después diga «${taught('shifted')}».`,
      };
    case 'nothing to check':
      return { spoken: 'Nada que revisar.', written: 'Ahora no hay duda sobre el enfoque.' };
    case 'nothing to enter':
      return { spoken: 'No hay valor que introducir.', written: 'Este resultado no da un valor que introducir.' };
    case 'not offered':
      return { spoken: 'Aún no.', written: `Aún no hay resultado. Para terminar el barrido como está, diga «${taught('finish')}».` };
  }
}

function spelled(value: number): string {
  const digits = [...String(Math.abs(value))];
  const whole = sayCorrection(value);
  return digits.length < 2 ? whole : `${whole}, ${digits.map((digit) => sayNumber(Number(digit))).join(' ')}`;
}

export const words: SpokenWords = {
  prompt,
  correction: sayCorrection,
  brief: (one) => (one.say === 'did it hold' ? '¿Fija?' : sentences(sayCorrection(one.next.value))),
  reason,
  outcome,
  help: (now) => both(`Puede decir: ${now.map((word) => (word === 'set' ? `${taught(word)} y un número con su signo` : taught(word))).join(', ')}.`),
  askBack: {
    // "¿Izquierda?", "¿Menos quince, uno cinco?"
    question: ({ input, words: heard }) => ({
      spoken: `¿${capital(input.told === 'set' ? spelled(input.value) : heard)}?`,
      written: `¿Ha dicho «${heard}»? Si es así, dígalo otra vez. Si no, diga «${taught('undo')}» u otra palabra.`,
    }),
    notTaken: { spoken: 'No cuenta.', written: 'Eso no cuenta. Diga qué era.' },
    sayAgain: { spoken: 'Repita, por favor.', written: 'No se ha entendido. Dígalo otra vez.' },
  },
  mark: {
    made: (value) => ({
      spoken: `${capital(sayCorrection(value))}, marcado como introducido.`,
      written: `${writeSteps(value)} queda marcado como introducido en la cámara. Deshacer quita la marca.`,
    }),
    madeBefore: (value) => ({
      spoken: `${capital(sayCorrection(value))} ya está marcado.`,
      written: `${writeSteps(value)} ya está marcado como introducido en la cámara.`,
    }),
    takenBack: (value) => ({ spoken: 'Marca quitada.', written: `Se ha quitado la marca: ${writeSteps(value)} no cuenta como introducido.` }),
  },
};
