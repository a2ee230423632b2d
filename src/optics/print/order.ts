// What the target's page is asked to print, as it stands in the page's address: everything it draws follows from this.
import * as v from 'valibot';
import { fits } from '../fits.ts';
import { Magnification } from '../quantity.ts';
import { Sensor } from '../sensor.ts';

const length = (least: number, most: number) => v.pipe(v.number(), v.minValue(least), v.maxValue(most), v.brand('Millimetres'));

export const TargetOrder = v.object({
  magnification: Magnification,
  pitch: length(0.0005, 0.05),
  area: length(0.1, 50),
  sensor: Sensor,
  /** Total depth of field: how far the ramp's numbers reach. Null where it has no end. */
  depth: v.nullable(length(0, 1_000_000)),
  /** The situation and the date, a line each. */
  words: v.pipe(v.array(v.pipe(v.string(), v.maxLength(200))), v.maxLength(8)),
  paper: v.picklist(['A4', 'Letter']),
});
export type TargetOrder = v.InferOutput<typeof TargetOrder>;

export const writeOrder = (order: TargetOrder): string => encodeURIComponent(JSON.stringify(order));

/** From the address, which anyone may have changed; null where it is no order. */
export function readOrder(address: string): TargetOrder | null {
  try {
    const order = fits(TargetOrder, JSON.parse(decodeURIComponent(address)));
    if (order.ok) return order.value;
  } catch {
    // Told like everything else that is no order.
  }
  return null;
}
