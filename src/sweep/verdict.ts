// What was seen in one hold, and how it counts (common practice, no source). The only place that knows that a
// steady light with one arrow is out, or that a late light is close to the band.
import * as v from 'valibot';

/** The focus light during one hold. `untold`: it failed, and the person did not say how. */
export const Light = v.picklist(['steady', 'late', 'flicker', 'dark', 'untold']);
export type Light = v.InferOutput<typeof Light>;

/**
 * The rangefinder arrows during one hold. `left`, `right`: that one alone or clearly more often;
 * `balanced`: both evenly; `lopsided`: both, one more often, without saying which.
 */
export const Arrows = v.picklist(['none', 'left', 'right', 'balanced', 'lopsided']);
export type Arrows = v.InferOutput<typeof Arrows>;

export const Verdict = v.object({ light: Light, arrows: Arrows });
export type Verdict = v.InferOutput<typeof Verdict>;

/** Which way the right arrow sends the correction. Makers differ, so it is a setting of the body. */
const ArrowSense = v.picklist(['right-is-up', 'right-is-down']);

/** What a body shows beside its focus light. */
export const ArrowDisplay = v.picklist(['absent', ...ArrowSense.options]);
export type ArrowDisplay = v.InferOutput<typeof ArrowDisplay>;

/** How far outside the band an out verdict looks; ordered from close to far, `untold` when nothing is known. */
export type Grade = 'near' | 'flicker' | 'dark' | 'untold';
/** Where the centre lies, seen from the value that was held. */
export type Side = 'above' | 'below' | 'untold';
/** How a verdict counts for the value. */
export type Reading = { counts: 'in' } | { counts: 'out'; grade: Grade; side: Side };

const GRADE_OF: Record<Light, Grade> = { steady: 'near', late: 'near', flicker: 'flicker', dark: 'dark', untold: 'untold' };

/** Reads a verdict by the trade's rules; the arrows count only on a body that has them. */
export function read(verdict: Verdict, display: ArrowDisplay): Reading {
  const arrows = display === 'absent' ? 'none' : verdict.arrows;
  if (verdict.light === 'steady' && (arrows === 'none' || arrows === 'balanced')) return { counts: 'in' };
  return { counts: 'out', grade: GRADE_OF[verdict.light], side: sideOf(arrows, display) };
}

function sideOf(arrows: Arrows, display: ArrowDisplay): Side {
  if (arrows !== 'left' && arrows !== 'right') return 'untold';
  return (arrows === 'right') === (display === 'right-is-up') ? 'above' : 'below';
}
