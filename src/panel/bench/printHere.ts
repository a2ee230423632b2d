// What is printed for this rig: whose it says it is, how large, on how many sheets, and the address of the page that prints it.
import type { TargetMeasure } from '../../optics/print/measure.ts';
import { sheetCount } from '../../optics/print/sheets.ts';
import { drawTarget, SCALE } from '../../optics/print/target.ts';
import type { Drawing } from '../../optics/print/drawing.ts';
import type { Moment } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { targetAddress } from './given.ts';
import type { Reckoned } from './reckon.ts';
import type { BenchSubject } from './subject.ts';
import type { Picks } from './untyped.ts';

export interface PrintHere {
  readonly address: string | null;
  /** Null while the rig is not known, or where no target can be drawn for it. */
  readonly print: { readonly measure: TargetMeasure; readonly drawing: Drawing; readonly sheets: number } | null;
}

export function printHere(subject: BenchSubject, reckoned: Reckoned, { paper }: Picks, day: Moment): PrintHere {
  const say = words('print');
  const { rig, bench, unit, distance, focalLength } = reckoned;
  const whose = say.whose({ ...subject, focalLength, distance, unit, day });
  const address = rig && targetAddress(rig, reckoned, whose, paper);
  if (!bench?.ok || !bench.value.target.ok) return { address, print: null };
  const measure = bench.value.target.value;
  const { drawing } = drawTarget(measure, { words: [...whose, say.sizes(measure.bar, SCALE)], scale: say.scale(SCALE) });
  return { address, print: { measure, drawing, sheets: sheetCount(drawing, paper) } };
}
