// How long the printed scale is on paper. Printers shrink pages to fit, and every length told of a picture follows from the print: what was
// measured when the rig was set up stands there until something else is typed.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { LogRecord } from '../../logbook/record.ts';
import { checkPrint, TRUE_SIZE, type PrintFactor } from '../../optics/print/printCheck.ts';
import { SCALE } from '../../optics/print/target.ts';
import { benchFrom } from '../../optics/setUp/reading.ts';
import { millimetres, type Millimetres } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { Field } from '../parts/field.tsx';
import { numberTyped } from '../words/numberTyped.ts';
import { typedNumber } from '../words/typedNumber.ts';

export interface PrintedScale {
  readonly typed: ReadonlySignal<string>;
  /** What was typed is a length of it, or nothing. */
  readonly fits: ReadonlySignal<boolean>;
  /** What was told last and fits; true size where nothing was. */
  readonly factor: () => PrintFactor;
  readonly tell: (text: string) => void;
}

/** `known`: what the scale measured before; null where it was not measured. */
export function newPrintedScale(known: Millimetres | null): PrintedScale {
  const typed = signal(known === null ? '' : numberTyped(known, 1));
  const fits = signal(true);
  let factor = known === null ? TRUE_SIZE : (factorTyped(typed.peek()) ?? TRUE_SIZE);
  return {
    typed,
    fits,
    factor: () => factor,
    tell(text) {
      const told = factorTyped(text);
      typed.value = text;
      fits.value = told !== null;
      factor = told ?? factor;
    },
  };
}

/** An empty field is a print at true size. */
function factorTyped(typed: string): PrintFactor | null {
  if (typed.trim() === '') return TRUE_SIZE;
  const check = checkPrint(SCALE, millimetres(typedNumber(typed)));
  return check.ok ? check.value.factor : null;
}

/** Of the scale as it was drawn, measured when the rig of this situation was last set up; null where it was not. */
export function printMeasured(records: readonly LogRecord[], situation: string | null): Millimetres | null {
  const readings = records
    .filter(({ subject, practice }) => !practice && situation !== null && subject.situation === situation)
    .toSorted((one, other) => one.finished - other.finished)
    .flatMap(({ journal: [opened] }) => (opened?.did === 'opened' && opened.plan.bench ? benchFrom(opened.plan.bench).readings : []));
  const last = readings.findLast((reading) => reading.reads === 'print');
  return last === undefined ? null : millimetres((last.measured / last.drawn) * SCALE);
}

export function PrintedScaleField({ scale: { typed, fits, tell } }: { readonly scale: PrintedScale }) {
  const say = words('photographs').printed;
  return <Field label={say.label} text={typed.value} hint={say.hint} fault={fits.value ? undefined : say.fault} numeric onTyped={tell} />;
}
