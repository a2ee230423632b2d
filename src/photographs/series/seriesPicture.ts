// One picture of a series, as it was read, and the order in which the pictures of a series were taken.
import type { PictureSize } from '../../kit/photograph/jpeg.ts';
import type { Photograph } from '../../kit/photograph/photograph.ts';
import type { FocusReading } from '../focusReading.ts';
import type { PictureReading } from '../reading.ts';
import type { WithInterval } from '../withInterval.ts';

export interface SeriesPicture {
  readonly id: string;
  /** Of its file. */
  readonly name: string;
  readonly frame: PictureSize;
  /** What the camera wrote; null where it wrote nothing that can be read. */
  readonly camera: Photograph | null;
  readonly reading: PictureReading;
}

/** By the time the camera wrote, within one second by the file's name; by name alone where a camera wrote no time into one of them. */
export function inOrderTaken<Picture extends SeriesPicture>(pictures: readonly Picture[]): Picture[] {
  const timed = pictures.every(({ camera }) => camera !== null && camera.taken !== null);
  const byTime = (one: Picture, other: Picture): number => (timed ? (one.camera?.taken ?? 0) - (other.camera?.taken ?? 0) : 0);
  return [...pictures].sort((one, other) => byTime(one, other) || byName(one.name, other.name));
}

/** Cameras number their files: 10 comes after 9, however many noughts stand before. */
function byName(one: string, other: string): number {
  const [ours, theirs] = [partsOf(one), partsOf(other)];
  for (let at = 0; at < Math.min(ours.length, theirs.length); at += 1) {
    const [a, b] = [ours[at]!, theirs[at]!];
    const [first, second] = [Number(a), Number(b)];
    if (first !== second && !Number.isNaN(first) && !Number.isNaN(second)) return first - second;
    if (a !== b) return a < b ? -1 : 1;
  }
  return ours.length - theirs.length;
}

const partsOf = (name: string): readonly string[] => name.match(/\d+|\D+/g) ?? [];

/** Millimetres from the target to the focused plane, positive behind it. */
export const errorOf = ({ ramp }: FocusReading): WithInterval => ({ value: ramp.error, low: ramp.interval.low, high: ramp.interval.high });
