// A whole picture of the rig, target and ramp, as the tests' own camera takes it, held upright so that both are in it.
import type { Mounted } from '../../src/practice/pictures/mounted.ts';
import type { TakenPicture } from '../../src/practice/pictures/takenPicture.ts';
import { photograph, type KeptShot } from './camera/photograph.ts';
import { rigFor } from './camera/rig.ts';
import { USUAL_SHOT } from './camera/usualShot.ts';

/** Of the pictures below, in millimetres: the longer side of the sensor is the picture's height. */
export const RIG_SENSOR = { width: 26, height: 16 };
const SENSOR = { ...USUAL_SHOT.sensor, width: 1600, height: 2600, pitch: 0.01 };

/** What of a shot may be another one. */
interface Otherwise {
  readonly prints?: 'both' | 'target' | 'none';
  /** Printed length over drawn length. */
  readonly printed?: number;
  readonly shot?: Partial<Pick<KeptShot, 'pose' | 'sensor' | 'development' | 'motion'>>;
}

const KEPT = 12;
const kept = new Map<string, TakenPicture>();

/** With 85 mm at f/1.8, two metres away, focused so many millimetres behind the target. One that was just taken is not taken again. */
export function rigPicture(focusError: number, otherwise: Otherwise = {}): TakenPicture {
  const key = JSON.stringify([focusError, otherwise]);
  const picture = kept.get(key) ?? taken(focusError, otherwise);
  kept.delete(key);
  kept.set(key, picture);
  const [oldest] = kept.keys();
  if (kept.size > KEPT && oldest !== undefined) kept.delete(oldest);
  // Who asks may paint over it.
  return { ...picture, rgba: picture.rgba.slice() };
}

function taken(focusError: number, { prints = 'both', printed = 1, shot: otherwise = {} }: Otherwise): TakenPicture {
  const shot = { ...USUAL_SHOT, sensor: SENSOR, lens: { ...USUAL_SHOT.lens, focusError }, ...otherwise };
  const { sheets } = rigFor(shot, 2);
  const shown = sheets.slice(0, { both: 2, target: 1, none: 0 }[prints]);
  return photograph(
    shown.map((sheet) => cameOut(sheet, printed)),
    shot,
    3,
  );
}

/** A print that came out smaller or larger, mounted as the true one would be. */
function cameOut(sheet: Mounted, factor: number): Mounted {
  const [origin, right, down] = [sheet.origin, sheet.right, sheet.down].map(([x, y, z]) => [factor * x, factor * y, factor * z] as const) as [
    Mounted['origin'],
    Mounted['right'],
    Mounted['down'],
  ];
  return { ...sheet, origin, right, down };
}
