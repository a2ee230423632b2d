// English: what was ticked and read while a rig was set up.
import { writeSteps } from '../../sweep/scale.ts';
import type { BenchReading } from '../../optics/setUp/reading.ts';
import type { ReadingsWords } from '../readingsWords.ts';
import { FROM } from './lengths.ts';
import { write } from './write.ts';

export const words: ReadingsWords = {
  title: 'Readings',
  ticked: (steps) => `${write.count(steps, { one: '# step', other: '# steps' })} ticked`,
  reading,
};

function reading(one: BenchReading): string {
  switch (one.reads) {
    case 'old value':
      return `correction stored before: ${writeSteps(one.value)}`;
    case 'print':
      return `printed scale: ${write.number(one.measured, 1)}\u00a0mm instead of ${write.number(one.drawn)}\u00a0mm`;
    case 'distance':
      return `distance: ${write.distance(one.distance)} from ${FROM[one.from]}`;
    case 'light':
      return `light: EV ${write.number(one.ev, 1)} at ISO 100`;
    case 'mirror':
      return `tilt by the mirror: ${write.degrees(one.tilt, 2)}`;
    case 'spot':
      return `tilt by the returning spot: ${write.degrees(one.tilt, 2)}`;
    case 'sides':
      return `tilt by the four sides: ${write.degrees(one.tilt, 1)}, give or take ${write.degrees(2 * one.uncertainty, 1)}`;
    case 'magnification':
      return `scale in the photograph: ${write.number(one.pixels)} pixels for ${write.number(one.length, 1)}\u00a0mm`;
    case 'temperature':
      return `temperature: ${write.unit(one.celsius, 'celsius')}`;
    case 'live view':
      return one.sharp ? 'live view was sharp' : 'live view was not sharp';
    case 'placement':
      return `share of the depth in front: ${write.percent(one.share)}`;
  }
}
