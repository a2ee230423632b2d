// The practice camera: a body and lens with a true band, whose focus light behaves as a real one does. The demo lamp
// plays what it returns, the tests and the bench judge it, and a person can train eye and words on it.
// Behaviour from common practice, no source.
import type { Arrows, ArrowDisplay, Verdict } from '../sweep/verdict.ts';
import { normal, type Random } from './random.ts';

export interface PracticeCamera {
  /** True edges of the band, in corrections; they need not be whole, nor on the scale. */
  readonly low: number;
  readonly high: number;
  /** How far the light wavers about each edge: standard deviation in steps. */
  readonly softLow: number;
  readonly softHigh: number;
  /** Steps outside the band up to which the light comes on late, and from which it stays dark. */
  readonly lateUpTo: number;
  readonly darkFrom: number;
  /** Share of holds spoilt by a blink or a nudge. */
  readonly lapses: number;
  readonly arrows: ArrowDisplay;
}

/** Nine of ten spoilt holds look out, and one failed hold in ten shows any grade (common practice, no source). */
const LAPSE_IN = 0.1;
const STRAY = 0.1;
const WAVER = 0.5;
const ARROW_RIGHT = 0.95;

/** What the finder shows in one half-press held for the full hold time at this correction. */
export function halfPress(camera: PracticeCamera, value: number, random: Random): Verdict {
  const belowBy = normal(random, camera.low, camera.softLow) - value;
  const aboveBy = value - normal(random, camera.high, camera.softHigh);
  const lapsed = random() < camera.lapses;
  const held = lapsed ? random() < LAPSE_IN : belowBy <= 0 && aboveBy <= 0;
  if (held) return { light: 'steady', arrows: camera.arrows === 'absent' ? 'none' : 'balanced' };
  const outside = normal(random, Math.max(camera.low - value, value - camera.high), WAVER);
  return { light: failing(camera, outside, random), arrows: arrowsAt(camera, value, random) };
}

function failing(camera: PracticeCamera, outside: number, random: Random): 'late' | 'flicker' | 'dark' {
  if (random() < STRAY) return (['late', 'flicker', 'dark'] as const)[Math.floor(random() * 3)] ?? 'dark';
  if (outside < camera.lateUpTo) return 'late';
  return outside < camera.darkFrom ? 'flicker' : 'dark';
}

function arrowsAt(camera: PracticeCamera, value: number, random: Random): Arrows {
  if (camera.arrows === 'absent') return 'none';
  const above = (camera.low + camera.high) / 2 > value;
  const told = random() < ARROW_RIGHT ? above : !above;
  return told === (camera.arrows === 'right-is-up') ? 'right' : 'left';
}
