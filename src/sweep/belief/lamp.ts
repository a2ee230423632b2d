// How a light fails, by how far outside the band the value lies. Lamps differ from body to body: one comes on late near
// the band and flickers farther out, one flickers at once, one never flickers, and not every one goes dark. Each lamp that
// could be is a kind with a share beforehand; the holds of a sweep say which it is. Common practice and simulation, no
// source.
import { ogive } from './normalOgive.ts';
import { GRADES } from './observation.ts';

/** Of the failing holds near the band, the share that come on late, and of those farther out, the share that flicker. */
const MIXES = [
  { late: 1, flicker: 1, share: 0.64 },
  { late: 0.5, flicker: 1, share: 0.12 },
  { late: 0, flicker: 1, share: 0.1 },
  { late: 0.5, flicker: 0.5, share: 0.05 },
  { late: 1, flicker: 0, share: 0.09 },
];
/** Steps outside the band from which the light stays dark; some never do. */
const DARK_FROM = [
  { steps: 1.5, share: 0.07 },
  { steps: 3, share: 0.28 },
  { steps: 6, share: 0.32 },
  { steps: 10, share: 0.23 },
  { steps: Number.POSITIVE_INFINITY, share: 0.1 },
];
/** Steps outside the band up to which a failing light is near it. */
const NEAR_UP_TO = 1;
/** How sharply one grade gives way to the next, in steps, plus a share of the boundary. */
const BLUR = 0.5;
const BLUR_SHARE = 0.1;
/** Share of failed holds whose grade tells nothing. */
const STRAY = 0.1;

export interface Lamp {
  readonly share: number;
  /** Of the failing holds near the band, the share that come late, and of those between near and dark. */
  readonly lateNear: number;
  readonly lateBetween: number;
  /** Its place among the boundaries from which it stays dark. */
  readonly dark: number;
}

export const LAMPS: readonly Lamp[] = MIXES.flatMap((mix) =>
  DARK_FROM.map(({ share }, dark) => ({ share: mix.share * share, lateNear: mix.late, lateBetween: 1 - mix.flicker, dark })),
);
export const BOUNDARIES = DARK_FROM.length;

/** How a failing light so many steps outside the band falls to "near", and for each boundary to "between" and "dark". */
export interface Zones {
  readonly near: number;
  readonly dark: readonly number[];
}

export function zonesAt(outside: number): Zones {
  const beyondNear = past(NEAR_UP_TO, outside);
  return { near: 1 - beyondNear, dark: DARK_FROM.map(({ steps }) => Math.min(beyondNear, past(steps, outside))) };
}

/** The chance of each grade, in the order of `GRADES`. */
export function gradesOf({ lateNear, lateBetween, dark }: Lamp, zones: Zones): number[] {
  const far = zones.dark[dark]!;
  return grades(zones.near * lateNear + (1 - zones.near - far) * lateBetween, far);
}

/** One failing hold of an earlier sweep on the same body: how far outside the band, in steps, and how the light failed. */
export interface Sighting {
  readonly outside: number;
  readonly light: 'late' | 'flicker' | 'dark';
}

const LIGHTS = ['late', 'flicker', 'dark'] as const satisfies readonly Sighting['light'][];

/** What earlier sweeps make of each lamp: the share it would have after them, as a multiple of the one it has without. */
export function afterSightings(seen: readonly Sighting[]): number[] {
  const zones = seen.map(({ outside }) => zonesAt(outside));
  const chances = LAMPS.map((lamp) => seen.reduce((product, { light }, at) => product * gradesOf(lamp, zones[at]!)[LIGHTS.indexOf(light)]!, 1));
  const whole = chances.reduce((sum, chance, at) => sum + chance * LAMPS[at]!.share, 0);
  return chances.map((chance) => chance / whole);
}

/** Chances of late, flicker and dark, with the grades that tell nothing. */
const grades = (late: number, dark: number): number[] => [strayed(late), strayed(1 - late - dark), strayed(dark)];
export const strayed = (chance: number): number => (1 - STRAY) * chance + STRAY / GRADES.length;

const past = (boundary: number, outside: number): number => (Number.isFinite(boundary) ? ogive((outside - boundary) / (BLUR + BLUR_SHARE * boundary)) : 0);
