// The answer to a look-up: a sentence to be read aloud, and a line for a list or the address bar.
import { writeSteps } from '../../sweep/scale.ts';
import type { Moment } from '../../units.ts';
import type { Shelved } from '../shelf.ts';

/** How the person's own calendar writes a day; the screen knows it, the core does not. */
export type WriteDay = (at: Moment) => string;

/** "Orrin 85 f/1.8 on Velde M1, 85 mm at 4.25 m: plus 6, entered on 3 March 2026. 2 more on screen." */
export function answerOf(found: readonly Shelved[], writeDay: WriteDay): string {
  const [best, ...more] = found;
  if (!best) return 'Nothing in the logbook fits.';
  const { subject } = best;
  const place = `${subject.lens} on ${subject.body}, ${subject.focalLength} mm at ${subject.distance / 1000} m`;
  const service = best.measured?.service ? ' The pair needs service.' : '';
  const others = more.length === 0 ? '' : ` ${more.length} more on screen.`;
  return `${place}: ${valueSaid(best, writeDay)}.${service}${others}`;
}

function valueSaid({ value, at, state, measured }: Shelved, writeDay: WriteDay): string {
  if (state === 'never measured') return 'never measured';
  if (value === null || at === null) return 'measured, but no value was found';
  const day = writeDay(at);
  switch (state) {
    case 'measured':
      return `${sayValue(value)}, measured on ${day}, not entered yet`;
    case 'entered':
      return `${sayValue(value)}, entered on ${day}`;
    case 'differ':
      return `${sayValue(value)} entered on ${day}, but ${sayValue(measured?.chosen ?? value)} measured`;
  }
}

const sayValue = (value: number): string =>
  value === 0 ? 'zero' : `${value > 0 ? 'plus' : 'minus'} ${Math.abs(value)}`;

/** "+6  Orrin 85 f/1.8 · Velde M1 · 85 mm · 4.25 m": plain text, to be escaped by whoever puts it into markup. */
export function lineOf({ subject, value }: Shelved): string {
  const { lens, body, focalLength, distance } = subject;
  const shown = value === null ? 'no value' : writeSteps(value);
  return `${shown}  ${lens} · ${body} · ${focalLength} mm · ${distance / 1000} m`;
}
