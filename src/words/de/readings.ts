// German: what was ticked and read while a rig was set up.
import { writeSteps } from '../../sweep/scale.ts';
import type { BenchReading } from '../../optics/setUp/reading.ts';
import type { ReadingsWords } from '../readingsWords.ts';
import { FROM } from './lengths.ts';
import { write } from './write.ts';

export const words: ReadingsWords = {
  title: 'Ablesungen',
  ticked: (steps) => `${write.count(steps, { one: '# Schritt', other: '# Schritte' })} abgehakt`,
  reading,
};

function reading(one: BenchReading): string {
  switch (one.reads) {
    case 'old value':
      return `vorher gespeicherte Korrektur: ${writeSteps(one.value)}`;
    case 'print':
      return `gedruckte Skala: ${write.number(one.measured, 1)}\u00a0mm statt ${write.number(one.drawn)}\u00a0mm`;
    case 'distance':
      return `Entfernung: ${write.distance(one.distance)} ab ${FROM[one.from]}`;
    case 'light':
      return `Beleuchtung: LW\u00a0${write.number(one.ev, 1)} bei ISO\u00a0100`;
    case 'mirror':
      return `Neigung nach dem Spiegel: ${write.degrees(one.tilt, 2)}`;
    case 'spot':
      return `Neigung nach dem Lichtpunkt: ${write.degrees(one.tilt, 2)}`;
    case 'sides':
      return `Neigung nach den vier Seiten: ${write.degrees(one.tilt, 1)} ± ${write.degrees(2 * one.uncertainty, 1)}`;
    case 'magnification':
      return `Skala in der Aufnahme: ${write.number(one.pixels)} Pixel für ${write.number(one.length, 1)}\u00a0mm`;
    case 'temperature':
      return `Temperatur: ${write.unit(one.celsius, 'celsius')}`;
    case 'live view':
      return one.sharp ? 'Livebild war scharf' : 'Livebild war nicht scharf';
    case 'placement':
      return `Anteil der Schärfentiefe vor dem Motiv: ${write.percent(one.share)}`;
  }
}
