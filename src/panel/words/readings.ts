// A reading of the bench in words.
import { writeNumber } from '../../optics/quantity.ts';
import type { BenchReading } from '../../optics/setUp/reading.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { inMetres } from './quantities.ts';

export function readingInWords(reading: BenchReading): string {
  switch (reading.reads) {
    case 'old value':
      return `correction stored before: ${writeSteps(reading.value)}`;
    case 'print':
      return `printed scale: ${writeNumber(reading.measured, 1)} mm of ${writeNumber(reading.drawn, 0)} mm`;
    case 'distance':
      return `distance: ${inMetres(reading.distance)} from the ${reading.from === 'film plane' ? 'film plane' : 'front of the lens'}`;
    case 'light':
      return `light: EV ${writeNumber(reading.ev, 1)} at ISO 100`;
    case 'mirror':
      return `tilt by the mirror: ${writeNumber(reading.tilt, 2)}\u00b0`;
    case 'spot':
      return `tilt by the returning spot: ${writeNumber(reading.tilt, 2)}\u00b0`;
    case 'sides':
      return `tilt by the four sides: ${writeNumber(reading.tilt, 1)}\u00b0, give or take ${writeNumber(2 * reading.uncertainty, 1)}\u00b0`;
    case 'magnification':
      return `scale in the photograph: ${writeNumber(reading.pixels, 0)} pixels for ${writeNumber(reading.length, 1)} mm`;
    case 'temperature':
      return `temperature: ${writeNumber(reading.celsius, 0)} \u00b0C`;
    case 'live view':
      return reading.sharp ? 'live view was sharp' : 'live view was not sharp';
    case 'placement':
      return `share in front of the subject: ${writeNumber(reading.share * 100, 0)} %`;
  }
}
