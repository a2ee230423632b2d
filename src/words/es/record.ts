// Spanish: one sweep of the logbook.
import type { Light } from '../../sweep/verdict.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { RecordWords } from '../recordWords.ts';
import { place } from './subject.ts';
import { ARROWS_SEEN } from './verdict.ts';
import { write } from './write.ts';

const LIGHT: Readonly<Record<Light, string>> = {
  steady: 'la luz estuvo fija',
  late: 'la luz llegó tarde',
  flicker: 'la luz parpadeó',
  dark: 'la luz no se encendió',
  untold: 'la prueba falló',
};

const COUNTS = { in: 'Cuenta como dentro de la banda.', out: 'Cuenta como fuera de la banda.' } as const;

const between = ({ from, to }: { readonly from: number; readonly to: number }): string =>
  from === to ? `en ${write.signed(from, 1)}` : `entre ${write.signed(from, 1)} y ${write.signed(to, 1)}`;

export const words: RecordWords = {
  title: 'Cuaderno',
  gone: 'Este barrido ya no está en el cuaderno.',
  details: (subject, finished) => line([place(subject), subject.body, write.day(finished)]),
  bench: 'El banco',
  conditions: {
    open: (noted) => (noted ? 'Cambiar la luz, la temperatura o la nota' : 'Anotar la luz, la temperatura y más'),
    form: 'Condiciones',
    save: 'Guardarlo con este barrido',
    saved: 'Guardado.',
  },
  replay: {
    open: 'Repasarlo, prueba a prueba',
    title: 'Repaso',
    at: (step, last) => `Repaso: ${write.number(step)} de ${write.number(last)}`,
    earlier: 'Anterior',
    later: 'Siguiente',
    play: 'Reproducir',
    halt: 'Pausa',
    sure: (interval) => `El centro está ${between(interval)}, con un ${write.percent(0.95)} de confianza.`,
    narrowing: (first, last) => `Cómo se fue precisando: el centro estaba ${between(first)} antes de la primera prueba y ${between(last)} al final.`,
    opened: 'Antes de la primera prueba.',
    held: ({ number, value, light, arrows, counts }) => {
      const beside = ARROWS_SEEN[arrows];
      const seen = beside === null ? LIGHT[light] : `${LIGHT[light]}, ${beside}`;
      const hold = `Prueba ${write.number(number)} con ${writeSteps(value)}: ${seen}.`;
      return light === 'untold' ? hold : `${hold} ${COUNTS[counts]}`;
    },
    takenBack: (left) => `Deshecha. ${write.count(left, { one: 'Queda # prueba', other: 'Quedan # pruebas' })}.`,
    begunAfresh: 'El enfoque se había movido, así que el barrido empezó de nuevo.',
    ended: 'Fin del barrido.',
    checking: 'Las pruebas se contradecían, así que el barrido pidió revisar el enfoque.',
    turning: 'El barrido pidió girar el anillo.',
    offered: 'El barrido ofreció terminar.',
    next: (value, why) => `Después, ${writeSteps(value)}: ${why}.`,
  },
};
