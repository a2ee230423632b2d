// What may be wrong with a practice camera, so that a person can meet each trouble before it costs an evening. An oddity
// changes what a half-press shows; the rest of the camera stays as it was drawn. Behaviour from common practice, no source.
import type { Arrows, Light, Verdict } from '../sweep/verdict.ts';
import { halfPress, type PracticeCamera } from './camera.ts';
import { Oddity } from '../sweep/oddity.ts';
import { seededRandom, type Random } from './random.ts';

/** One of them by chance; without arrows on the body none can turn. */
export function drawOddity(seed: number, arrows: boolean): Oddity {
  const open = Oddity.options.filter((oddity) => arrows || oddity !== 'arrows turn round');
  return open[Math.floor(seededRandom(seed + OWN_DRAW)() * open.length)] ?? 'never lights';
}

/** Keeps the draws of an oddity apart from those of the band. */
const OWN_DRAW = 77_003;
/** The hold from which arrows are turned round, and before which the focus has been knocked: at least, and so many more. */
const TURNS_FROM = 3;
const KNOCKED_FROM = 6;
const SOME = 3;
/** How far a knocked focus ring moves the band, in steps. */
const KNOCK = 4;
/** A hole in the middle spans this share of the band. */
const HOLE = 0.35;

/** What the `nth` half-press shows at a value. */
export function oddPress(camera: PracticeCamera, oddity: Oddity, value: number, nth: number, seed: number, random: Random): Verdict {
  const own = seededRandom(seed + OWN_DRAW);
  own();
  const usual = halfPress(camera, value, random);
  switch (oddity) {
    case 'flickers everywhere':
      return { light: mostly('flicker', 0.85, random), arrows: eitherArrow(camera, random) };
    case 'never lights':
      return { light: 'dark', arrows: 'none' };
    case 'lights everywhere':
      return { light: mostly('steady', 0.97, random), arrows: camera.arrows === 'absent' ? 'none' : 'balanced' };
    case 'hole in the band':
      return isInHole(camera, value) && usual.light === 'steady' ? { light: mostly('flicker', 0.9, random), arrows: eitherArrow(camera, random) } : usual;
    case 'arrows turn round':
      return nth < TURNS_FROM + Math.floor(SOME * own()) ? usual : { ...usual, arrows: TURNED[usual.arrows] };
    case 'focus moves': {
      const { from, by } = knockOf(seed);
      return nth < from ? usual : halfPress({ ...camera, low: camera.low + by, high: camera.high + by }, value, random);
    }
  }
}

type Band = Pick<PracticeCamera, 'low' | 'high'>;

/** Where its band fails: about the middle, with good values on both sides. */
export function holeOf({ low, high }: Band): { readonly from: number; readonly to: number } {
  const half = Math.max(0.6, (HOLE * (high - low)) / 2);
  const middle = (low + high) / 2;
  return { from: middle - half, to: middle + half };
}

function isInHole(camera: PracticeCamera, value: number): boolean {
  const { from, to } = holeOf(camera);
  return value > from && value < to;
}

/** The hold from which a focus that moves has moved, and by how many steps. */
export function knockOf(seed: number): { readonly from: number; readonly by: number } {
  const own = seededRandom(seed + OWN_DRAW);
  own();
  const from = KNOCKED_FROM + Math.floor(SOME * own());
  return { from, by: own() < 0.5 ? KNOCK : -KNOCK };
}

const OTHERS: Record<'flicker' | 'steady', readonly Light[]> = { flicker: ['late', 'late', 'dark'], steady: ['late'] };

function mostly(light: 'flicker' | 'steady', share: number, random: Random): Light {
  const others = OTHERS[light];
  return random() < share ? light : (others[Math.floor(random() * others.length)] ?? light);
}

const eitherArrow = (camera: PracticeCamera, random: Random): Arrows => (camera.arrows === 'absent' ? 'none' : random() < 0.5 ? 'left' : 'right');

const TURNED: Record<Arrows, Arrows> = { left: 'right', right: 'left', none: 'none', balanced: 'balanced', lopsided: 'lopsided' };
