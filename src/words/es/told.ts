// Spanish: whose sweep it is.
import { writeSteps } from '../../sweep/scale.ts';
import { byUnit } from '../countryInUse.ts';
import { line } from '../line.ts';
import type { Part, ToldWords } from '../toldWords.ts';
import { place } from './subject.ts';
import { write } from './write.ts';

const PARTS: Readonly<Record<Part, string>> = { body: 'Cuerpo', lens: 'Objetivo', length: 'Focal', distance: 'Distancia', scale: 'Rango', more: 'Más' };

export const words: ToldWords = {
  line: 'De qué trata el barrido',
  parts: PARTS,
  open: (part) => `${PARTS[part]}: aún sin indicar`,
  is: (part, value) => `${PARTS[part]}: ${value}`,
  chip: {
    lens: (lens, converter) => (converter === null ? lens : `${lens} + ${converter}`),
    length: write.millimetres,
    distance: (length) => write.distance(length),
    scale: ({ min, max, step }) =>
      step === 1 ? `${writeSteps(min)}…${writeSteps(max)}` : `${writeSteps(min)}…${writeSteps(max)} de ${write.number(step)} en ${write.number(step)}`,
    all: line,
  },
  done: 'Listo',
  fewer: 'Cerrar',
  body: { choose: 'Cuerpo', another: 'Otro cuerpo…', name: 'Nombre del cuerpo', hint: 'El nombre que usted le da.' },
  lens: { choose: 'Objetivo', another: 'Otro objetivo…', name: 'Nombre del objetivo', hint: 'Con su distancia focal, por ejemplo «Corvid 85».' },
  length: {
    field: 'Distancia focal, mm',
    hint: 'La grabada en el objetivo.',
    converted: 'La grabada en el objetivo, sin el convertidor.',
    ends: '¿Qué extremo del zoom?',
  },
  distance: {
    get field() {
      return byUnit({ m: 'Distancia a la diana,\u00a0m', ft: 'Distancia a la diana,\u00a0ft' });
    },
    hint: 'Use la distancia a la que suele fotografiar. Si lo deja vacío, son 50 distancias focales, lo habitual.',
  },
  scale: { legend: 'Rango de corrección', from: 'De', to: 'a', step: 'paso' },
  arrows: {
    label: 'Flechas junto a la luz de enfoque',
    is: { absent: 'Sin flechas', 'right-is-up': 'Flecha derecha: subir, hacia +', 'right-is-down': 'Flecha derecha: bajar, hacia \u2212' },
  },
  converter: { label: 'Convertidor', none: 'Ninguno' },
  subject: (subject) => ({ lens: subject.lens, details: line([place(subject), subject.body]) }),
  unnamed: ({ lens, body, focalLength }) => ({
    lens: lens?.name ?? 'Aún sin nombre',
    details: line([focalLength !== null && write.millimetres(focalLength), body?.name ?? null]) || 'Póngale nombre antes de dejar el resultado',
  }),
  whose: {
    title: '¿De qué objetivo es el resultado?',
    body: 'Cuerpo',
    lens: 'Objetivo, con su distancia focal',
    length: 'Distancia focal, mm',
    hint: 'Por ejemplo, «Corvid 85 f/1.8».',
    ends: '¿Qué extremo del zoom fue?',
    keep: 'Guardarlo con este nombre',
    later: 'También se guarda sin nombre. Puede ponérselo más tarde.',
    missing: {
      body: 'Ponga nombre también al cuerpo.',
      lens: 'Ponga nombre al objetivo.',
      length: 'Indique la distancia focal o inclúyala en el nombre del objetivo.',
    },
  },
};
