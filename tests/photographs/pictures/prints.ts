// Prints for a bench, as they are drawn for it.
import type { Drawing } from '../../../src/optics/print/drawing.ts';
import { measureTarget } from '../../../src/optics/print/measure.ts';
import { drawRamp, type Ramp } from '../../../src/optics/print/ramp.ts';
import { drawTarget, type Target } from '../../../src/optics/print/target.ts';
import { magnification } from '../../../src/optics/quantity.ts';
import { millimetres as mm } from '../../../src/units.ts';
import { words as print } from '../../../src/words/en/print.ts';

export function targetFor(m: number, area = 2.5, pitch = 0.006): Target {
  const measure = measureTarget({ magnification: magnification(m), pitch: mm(pitch), area: mm(area), sensor: { width: mm(36), height: mm(24) } });
  if (!measure.ok) throw new Error(measure.fault.is);
  return drawTarget(measure.value, { words: ['Velde M1 with Orrin 85 f/1.8', '85 mm at 4.25 m, 4 March 2026'], scale: print.scale(mm(100)) });
}

export const rampFor = (depth: number): Ramp => drawRamp(mm(depth), { words: [print.ramp], depth: print.depth });

/** The print without its marks. */
export const unmarked = ({ drawing }: Target): Drawing => ({ ...drawing, shapes: drawing.shapes.filter(({ kind }) => kind !== 'polygon' && kind !== 'disc') });
