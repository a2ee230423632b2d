// What blur passes for sharp, and how fine the pixels are. The circle of confusion is a convention: 1/1500 of the
// diagonal (R. F. Lyon, Depth of Field Outside the Box, 2006 draft), the traditional 0.030 mm of 36 x 24 mm over the
// crop factor (common practice), or 0.25 mm on an 8 x 10 inch print over its enlargement of 7.5 (common practice).
import * as v from 'valibot';
import { millimetres, type Millimetres } from '../units.ts';
import { failed, got, type Result } from '../result.ts';
import type { BenchFault, PlainFault } from './fault.ts';

const side = (least: number, most: number, otherwise: PlainFault) =>
  v.pipe(v.number(otherwise), v.minValue(least, otherwise), v.maxValue(most, otherwise), v.brand('Millimetres'));

export const Sensor = v.object({
  width: side(4, 100, 'no sensor width'),
  height: side(3, 100, 'no sensor height'),
});
export type Sensor = v.InferOutput<typeof Sensor>;

/** The sizes met most (from memory); a body may hold any other. */
export const SENSORS: readonly Sensor[] = [
  { width: millimetres(36), height: millimetres(24) },
  { width: millimetres(23.6), height: millimetres(15.7) },
  { width: millimetres(22.3), height: millimetres(14.9) },
  { width: millimetres(17.3), height: millimetres(13) },
];

/** As a list carries it: "36x24". One that does not fit stands for the largest. */
export const writeSensor = ({ width, height }: Sensor): string => `${width}x${height}`;
export function readSensor(text: string): Sensor {
  const [width, height] = text.split('x').map(Number);
  const read = v.safeParse(Sensor, { width, height });
  return read.success ? read.output : FULL_FRAME;
}
export const FULL_FRAME: Sensor = { width: millimetres(36), height: millimetres(24) };

export const CircleOfConfusion = side(0.001, 0.2, 'no circle of confusion');

export const ConfusionRule = v.variant('by', [
  v.object({ by: v.literal('diagonal') }),
  v.object({ by: v.literal('traditional') }),
  v.object({ by: v.literal('print') }),
  v.object({
    by: v.literal('own'),
    diameter: CircleOfConfusion,
  }),
]);
export type ConfusionRule = v.InferOutput<typeof ConfusionRule>;

const diagonal = ({ width, height }: Sensor): Millimetres => millimetres(Math.hypot(width, height));

/** The crop factor: the diagonal of 36 x 24 mm over the sensor's. */
const cropFactor = (sensor: Sensor): number => Math.hypot(36, 24) / diagonal(sensor);

/** The circle of confusion's diameter on the sensor. */
export function confusion(sensor: Sensor, rule: ConfusionRule): Millimetres {
  switch (rule.by) {
    case 'diagonal':
      return millimetres(diagonal(sensor) / 1500);
    case 'traditional':
      return traditionalConfusion(cropFactor(sensor));
    case 'print':
      return millimetres(0.25 / (7.5 * cropFactor(sensor)));
    case 'own':
      return rule.diameter;
  }
}

export const traditionalConfusion = (crop: number): Millimetres => millimetres(0.03 / crop);

/** The pixel pitch from the photograph's width in pixels at full size. */
export function pixelPitch(sensor: Sensor, pixelsAcross: number): Result<Millimetres, BenchFault> {
  if (!(pixelsAcross >= 500 && pixelsAcross <= 30_000)) {
    return failed({ is: 'no width of a photograph' });
  }
  return got(millimetres(sensor.width / pixelsAcross));
}
