// What was seen in one hold, and how it counts (common practice, no source). The only place that knows that a
// steady light with one arrow is out, or that a late light is close to the band.
import type { ArrowDisplay, Arrows, Light, Verdict } from './storedVerdict.ts';

export type { ArrowDisplay, Arrows, Light, Verdict } from './storedVerdict.ts';

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
