// French: what was ticked and read while a rig was set up.
import { writeSteps } from '../../sweep/scale.ts';
import type { BenchReading } from '../../optics/setUp/reading.ts';
import type { ReadingsWords } from '../readingsWords.ts';
import { FROM } from './lengths.ts';
import { write } from './write.ts';

export const words: ReadingsWords = {
  title: 'Relevés',
  ticked: (steps) => write.count(steps, { one: '# étape cochée', other: '# étapes cochées' }),
  reading,
};

function reading(one: BenchReading): string {
  switch (one.reads) {
    case 'old value':
      return `correction mémorisée avant : ${writeSteps(one.value)}`;
    case 'print':
      return `échelle imprimée : ${write.number(one.measured, 1)} mm au lieu de ${write.number(one.drawn)} mm`;
    case 'distance':
      return `distance : ${write.distance(one.distance)} ${FROM[one.from]}`;
    case 'light':
      return `lumière : EV\u00a0${write.number(one.ev, 1)} à 100\u00a0ISO`;
    case 'mirror':
      return `inclinaison par le miroir : ${write.degrees(one.tilt, 2)}`;
    case 'spot':
      return `inclinaison par la tache renvoyée : ${write.degrees(one.tilt, 2)}`;
    case 'sides':
      return `inclinaison par les quatre côtés : ${write.degrees(one.tilt, 1)}, à ${write.degrees(2 * one.uncertainty, 1)} près`;
    case 'magnification':
      return `échelle dans la photo : ${write.number(one.pixels)} pixels pour ${write.number(one.length, 1)} mm`;
    case 'temperature':
      return `température : ${write.unit(one.celsius, 'celsius')}`;
    case 'live view':
      return one.sharp ? 'la visée écran était nette' : 'la visée écran n’était pas nette';
    case 'placement':
      return `part de la profondeur devant : ${write.percent(one.share)}`;
  }
}
