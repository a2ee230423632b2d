// What the pictures focused in live view say together: where critical focus falls on the ramp, which need not stand quite true.
import { around, doubtOf, NORMAL_MARGIN, type WithInterval } from '../withInterval.ts';

/** Null for none. Of several the mean, as unsure as they were measured, or as they scatter where that is more. */
export function liveViewReference(errors: readonly WithInterval[]): WithInterval | null {
  if (errors.length < 2) return errors[0] ?? null;
  const mean = errors.reduce((sum, { value }) => sum + value, 0) / errors.length;
  const measured = errors.reduce((sum, error) => sum + doubtOf(error) ** 2, 0) / errors.length;
  const scattered = errors.reduce((sum, { value }) => sum + (value - mean) ** 2, 0) / (errors.length - 1);
  return around(mean, NORMAL_MARGIN * Math.sqrt(Math.max(measured, scattered) / errors.length));
}
