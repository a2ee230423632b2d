// Spanish: the start and the next lens.
import { writeSteps } from '../../sweep/scale.ts';
import { line } from '../line.ts';
import type { StartWords } from '../startWords.ts';
import { write } from './write.ts';

export const words: StartWords = {
  found: {
    label: 'En el cuaderno',
    none: 'sin valor',
    more: (count) => `${write.number(count)} más en el cuaderno`,
  },
  startWith: (lens) => `Empezar: ${lens}`,
  startNew: (lens) => `Empezar: «${lens}», nuevo`,
  unfit: 'Algo de lo escrito aún no es válido. Cámbielo o pulse Escape en su campo.',
  noName: 'El nombre no hace falta. Lo demás puede añadirlo cuando quiera.',
  last: {
    label: 'Último objetivo',
    picked: 'Encontrado',
    notMeasured: 'aún sin medir',
    noValue: (at) => `sin valor, ${write.day(at)}`,
    value: (value, how, at) =>
      line([`último ${writeSteps(value)}, ${how === 'measured' ? 'medido' : 'introducido'} el ${write.day(at)}`, 'el barrido empieza cerca']),
  },
  nextLens: 'Objetivo siguiente',
  bench: 'Preparar el banco',
  byHand: 'Introducir un valor a mano',
  photographs: 'Comprobar con fotos',
  practice: { open: 'Cámara de práctica', note: 'Conozca primero la luz y las palabras en esta pantalla.' },
  unnamed: {
    label: 'Poner nombre',
    waits: (lens, value) => `${lens} (${value === null ? 'sin valor' : writeSteps(value)}) aún no tiene nombre.`,
    others: (count) => write.count(count, { one: 'Hay otro más sin nombre.', other: 'Hay otros # sin nombre.' }),
  },
  unfinished: {
    here: 'Hay un barrido sin terminar',
    elsewhere: 'Hay un barrido en curso en otra ventana',
    about: (lens, details) => `${lens}, ${details}.`,
    sofar: (holds) => `${write.count(holds, { one: '# prueba', other: '# pruebas' })} hasta ahora. No se ha perdido nada.`,
    goOn: 'Seguir con él',
    follow: 'Mirarlo',
    end: 'Terminarlo como está',
  },
  next: {
    title: 'Objetivo siguiente',
    field: 'Nombre del objetivo siguiente',
    placeholder: 'Nombre del objetivo',
    hint: 'Con su distancia focal, por ejemplo «Corvid 85». Intro para empezar.',
    planned: 'El siguiente del plan',
    plan: 'Ver el plan',
  },
};
