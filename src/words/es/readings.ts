// Spanish: what was ticked and read while a rig was set up.
import { writeSteps } from '../../sweep/scale.ts';
import type { BenchReading } from '../../optics/setUp/reading.ts';
import type { ReadingsWords } from '../readingsWords.ts';
import { FROM } from './lengths.ts';
import { write } from './write.ts';

export const words: ReadingsWords = {
  title: 'Lecturas',
  ticked: (steps) => write.count(steps, { one: '# paso marcado', other: '# pasos marcados' }),
  reading,
};

function reading(one: BenchReading): string {
  switch (one.reads) {
    case 'old value':
      return `corrección guardada antes: ${writeSteps(one.value)}`;
    case 'print':
      return `escala impresa: ${write.number(one.measured, 1)}\u00a0mm en lugar de ${write.number(one.drawn)}\u00a0mm`;
    case 'distance':
      return `distancia: ${write.distance(one.distance)} desde ${FROM[one.from]}`;
    case 'light':
      return `luz: EV\u00a0${write.number(one.ev, 1)} a ISO\u00a0100`;
    case 'mirror':
      return `inclinación con el espejo: ${write.degrees(one.tilt, 2)}`;
    case 'spot':
      return `inclinación con el punto de luz: ${write.degrees(one.tilt, 2)}`;
    case 'sides':
      return `inclinación por los cuatro lados: ${write.degrees(one.tilt, 1)} ± ${write.degrees(2 * one.uncertainty, 1)}`;
    case 'magnification':
      return `escala en la foto: ${write.number(one.pixels)} píxeles para ${write.number(one.length, 1)}\u00a0mm`;
    case 'temperature':
      return `temperatura: ${write.unit(one.celsius, 'celsius')}`;
    case 'live view':
      return one.sharp ? 'la vista en vivo estaba nítida' : 'la vista en vivo no estaba nítida';
    case 'placement':
      return `parte de la profundidad delante: ${write.percent(one.share)}`;
  }
}
