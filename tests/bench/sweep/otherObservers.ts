// Bodies, lenses and eyes that are not as the belief expects, one thing at a time: lamps that never show a grade, edges of
// another shape, a centre that moves while the sweep runs, verdicts that are wrong. Invented, from what practitioners
// tell; the ranges are common practice, no source.
import { halfPress, type PracticeCamera } from '../../../src/practice/camera.ts';
import { normal, seededRandom, type Random } from '../../../src/practice/random.ts';
import { USUAL_SCALE, type Scale } from '../../../src/sweep/scale.ts';
import type { Light, Verdict } from '../../../src/sweep/verdict.ts';
import { steps } from '../../../src/units.ts';
import { light, ordinary } from './observers.ts';

/** What went before a half-press. */
export interface Before {
  readonly holds: number;
  readonly seconds: number;
  /** The way the value was last changed: up, down, or not at all yet. */
  readonly way: 1 | -1 | 0;
}

/** One body with its lens and the person in front of it. */
interface Seat {
  readonly press: (value: number, before: Before) => Verdict;
  /** The true centre when a sweep has lasted so long. */
  readonly centre: (seconds: number) => number;
}

export interface OtherObserver {
  readonly name: string;
  readonly scale: Scale;
  readonly seat: (run: number) => Seat;
}

type Drawn = Omit<PracticeCamera, 'arrows'>;
type Press = (value: number, before: Before) => Verdict;
/** Changes what a camera shows; `own` is chance of its own, so that the camera's follows the same course. */
type Change = (press: Press, camera: PracticeCamera, own: Random) => Press;

const still = (name: string, draw: (random: Random) => Drawn, change: Change = (press) => press, scale = USUAL_SCALE): OtherObserver => ({
  name,
  scale,
  seat: (run) => {
    const camera: PracticeCamera = { ...draw(seededRandom(2 * run + 1)), arrows: 'absent' };
    const random = seededRandom(2 * run + 2);
    const centre = (camera.low + camera.high) / 2;
    const press = change((value) => halfPress(camera, value, random), camera, seededRandom(7919 * run + 3));
    return { press, centre: () => centre };
  },
});

/** The band of the ordinary observers, with edges of this softness and this share of spoilt holds. */
const usual =
  (softLow = 0.5, softHigh = softLow, lapses = 0.02) =>
  (random: Random): Drawn => ({
    ...ordinary(0.5).draw(random),
    ...light(random, softLow, softHigh, lapses),
  });

/** A band of a width between two bounds, edge to edge, wholly on the scale. */
const wide =
  (from: number, to: number, spread: number, limit = 19) =>
  (random: Random): Drawn => {
    const halfWidth = (from + (to - from) * random()) / 2;
    const room = Math.max(0, limit - halfWidth);
    const centre = Math.max(-room, Math.min(room, normal(random, 0, spread)));
    return { low: centre - halfWidth, high: centre + halfWidth, ...light(random, 0.5, 0.5, 0.02) };
  };

/** As ordinary on a scale of another length: centre and width grow with it, the light's own steps do not. */
const scaled =
  (limit: number) =>
  (random: Random): Drawn => {
    const centre = normal(random, 0, 0.3 * limit);
    const halfWidth = Math.exp(normal(random, Math.log(0.2 * limit), 0.5));
    return { low: centre - halfWidth, high: centre + halfWidth, ...light(random, 0.5, 0.5, 0.02) };
  };

const turning =
  (from: Light, into: Light): Change =>
  (press) =>
  (value, before) => {
    const verdict = press(value, before);
    return verdict.light === from ? { ...verdict, light: into } : verdict;
  };

/** The light late near the band and dark from where it would be dark anyway; never a flicker between. */
const neverFlickers: Change = (press, camera) => (value, before) => {
  const verdict = press(value, before);
  const outside = Math.max(camera.low - value, value - camera.high);
  return verdict.light === 'flicker' ? { ...verdict, light: outside < camera.darkFrom / 2 ? 'late' : 'dark' } : verdict;
};

/** The lamp loses the focus at moments that come by chance, the oftener the further out: half of the holds at the edge. */
const poisson: Change = (press, camera, own) => (value, before) => {
  const lapsed = own() < camera.lapses;
  if (lapsed) return press(value, before);
  const outside = Math.max(camera.low - value, value - camera.high);
  const perHold = Math.log(2) * Math.exp(outside / 0.5);
  const first = -Math.log(1 - own()) / perHold;
  if (first > 1) return { light: 'steady', arrows: 'none' };
  if (outside > camera.darkFrom) return { light: 'dark', arrows: 'none' };
  return { light: first < 0.1 ? 'late' : 'flicker', arrows: 'none' };
};

const WRONGLY: readonly Light[] = ['late', 'flicker', 'dark'];

/** Verdicts wrong one after another, once in the sweep. */
const spellOf =
  (length: number): Change =>
  (press, _, own) => {
    const from = 3 + Math.floor(own() * 6);
    return (value, before) => {
      const verdict = press(value, before);
      if (before.holds < from || before.holds >= from + length) return verdict;
      return { ...verdict, light: verdict.light === 'steady' ? (WRONGLY[Math.floor(own() * 2)] ?? 'late') : 'steady' };
    };
  };

const lateCalledSteady =
  (share: number): Change =>
  (press, _, own) =>
  (value, before) => {
    const verdict = press(value, before);
    return verdict.light === 'late' && own() < share ? { ...verdict, light: 'steady' } : verdict;
  };

/** The band lies so far to the side that the value was moved to. */
const backlash =
  (size: number): Change =>
  (press) =>
  (value, before) =>
    press(value - before.way * size, before);

/** The centre moves evenly for a minute and a half, up or down, and then stays. */
const WARM_AFTER = 90;
const drifting = (total: number): OtherObserver => {
  const name = `drift of ${total} steps`;
  const base = still(name, usual());
  return {
    ...base,
    seat: (run) => {
      const way = seededRandom(7919 * run + 3)() < 0.5 ? 1 : -1;
      const { press, centre } = base.seat(run);
      const moved = (seconds: number) => (way * total * Math.min(seconds, WARM_AFTER)) / WARM_AFTER;
      return {
        press: (value, before) => press(value - moved(before.seconds), before),
        centre: (seconds) => centre(0) + moved(seconds),
      };
    },
  };
};

const scaleTo = (limit: number): Scale => ({ min: steps(-limit), max: steps(limit), step: 1 });

export const OTHER_OBSERVERS: readonly OtherObserver[] = [
  still('as expected', usual()),
  still('soft edges, never late', usual(0.8), turning('late', 'flicker')),
  still('never flickers', usual(), neverFlickers),
  still('fails by chance in time', usual(), poisson),
  still('softness 1.5', usual(1.5)),
  still('softness 0.3 and 1.5', usual(0.3, 1.5)),
  still('backlash of 0.5 steps', usual(), backlash(0.5)),
  still('backlash of 1 steps', usual(), backlash(1)),
  drifting(0.5),
  drifting(1.5),
  still('a spell of two', usual(), spellOf(2)),
  still('a spell of three', usual(), spellOf(3)),
  still('late called steady, 10 %', usual(), lateCalledSteady(0.1)),
  still('late called steady, 30 %', usual(), lateCalledSteady(0.3)),
  still('lapses 10 %', usual(0.5, 0.5, 0.1)),
  still('bands 1 to 2 wide', wide(1, 2, 6)),
  still('bands 25 to 32 wide', wide(25, 32, 3)),
  still('scale to 10', scaled(10), undefined, scaleTo(10)),
  still('scale to 50', scaled(50), undefined, scaleTo(50)),
];
