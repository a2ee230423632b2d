// Spanish: the page for a workshop.
import { writeSteps } from '../../sweep/scale.ts';
import type { WorkshopWords } from '../workshopWords.ts';
import { shown } from './proved.ts';
import { pair } from './subject.ts';
import { LIGHT } from './verdict.ts';
import { write } from './write.ts';

const HOLDS = { one: '# prueba', other: '# pruebas' };

export const words: WorkshopWords = {
  title: 'Para el taller',
  gone: 'Este barrido no está en el cuaderno. Cierre esta página y vuelva a abrirla desde el resultado.',
  practice: 'Medido con la cámara de práctica, no con un cuerpo ni un objetivo reales.',
  pair,
  how: {
    title: 'Cómo se midió',
    focused: (holdTime) =>
      'El objetivo se enfocó en la vista en vivo, con la imagen ampliada y a la abertura máxima, sobre una diana paralela al sensor, y no se tocó más. Se pusieron ' +
      `correcciones una tras otra y cada vez se miró la luz de enfoque durante ${write.count(holdTime, { one: '#\u00a0segundo', other: '#\u00a0segundos' })} de media pulsación.`,
    counts:
      'Un valor cuenta como dentro si la luz se encendió al momento y no se apagó. Los valores que están dentro forman una banda. La corrección es su punto medio.',
    aside:
      'La banda se sale del rango de corrección, así que su ancho se midió otra vez con el enfoque un poco desviado. El centro con el enfoque nítido está a la mitad ' +
      'de ese ancho desde el extremo visto. El intervalo tiene en cuenta la vacilación de la luz en los extremos.',
    decides: 'Las pruebas son lo que el propietario vio en el visor. Decide la medición del propio taller.',
  },
  holds: {
    title: 'Todas las pruebas, en orden',
    inFocus: (count) => `Con el enfoque nítido, ${write.count(count, HOLDS)}`,
    aside: (count) => `Con el enfoque desviado, ${write.count(count, HOLDS)}`,
  },
  photographs: { title: 'Qué mostraron las fotos', ...shown },
  bench: 'El banco',
  facts: {
    body: 'Cuerpo',
    lens: 'Objetivo',
    focalLength: 'Distancia focal',
    distance: 'Distancia',
    range: 'Correcciones',
    measured: 'Medido',
  },
  named: (name, serial) => (serial === null ? name : `${name}, ${serial}`),
  length: write.millimetres,
  distance: (length) => write.distance(length),
  range: ({ min, max, step }) =>
    step === 1 ? `de ${writeSteps(min)} a ${writeSteps(max)}` : `de ${writeSteps(min)} a ${writeSteps(max)} en pasos de ${write.number(step)}`,
  day: write.day,
  sense: 'Una corrección mayor aleja el enfoque de la cámara.',
  table: { hold: 'Prueba', value: 'Valor', light: 'Luz', arrows: 'Flechas', counts: 'Cuenta' },
  number: (hold) => write.number(hold),
  light: LIGHT,
  arrows: { none: '', left: 'izquierda', right: 'derecha', balanced: 'las dos, iguales', lopsided: 'desiguales' },
  counts: { in: 'dentro', out: 'fuera' },
};
