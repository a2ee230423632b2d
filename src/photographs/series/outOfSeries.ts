// Which pictures do not belong to the series they were brought in with: those of another body, lens, focal length, aperture or distance. They
// would be measured well and mean something else. What most of the pictures share is the rule, and the situation where it is known. And a shot
// that is there twice, as raw file and JPEG or brought in again, would pass for two that agree.
import type { Kit } from '../../kit/kit.ts';
import { takenWith } from '../../kit/photograph/offers.ts';
import type { Photograph } from '../../kit/photograph/photograph.ts';
import type { SeriesPicture } from './seriesPicture.ts';

export type OutOfSeries = 'another body' | 'another lens' | 'another focal length' | 'another aperture' | 'another distance' | 'the same shot';

/** How far two pictures of one set-up may differ, as shares (common practice, no source). A lens that focuses inside changes its focal length a little. */
const SAME_FOCAL_LENGTH = 0.03;
const SAME_APERTURE = 0.06;
const SAME_SIZE = 0.05;

/** By the id of the picture; those that belong are not in it. `situation`: the id of the one the series is of; null where that is not known. */
export function outOfSeries(pictures: readonly SeriesPicture[], kit: Kit, situation: string | null): ReadonlyMap<string, OutOfSeries> {
  const of = kit.situations.find(({ id }) => id === situation) ?? null;
  const taken = pictures.map(({ camera }) => (camera === null ? null : takenWith(camera, kit)));
  const engraved = of !== null && of.converter === null ? of.focalLength : null;
  const body = among(
    pictures.map(({ camera }) => bodyOf(camera)),
    sameCopy,
  );
  const lens = among(
    pictures.map(({ camera }) => lensOf(camera)),
    sameCopy,
  );
  const focalLength =
    engraved ??
    among(
      pictures.map(({ camera }) => camera?.focalLength ?? null),
      within(SAME_FOCAL_LENGTH),
    );
  const aperture = among(
    pictures.map(({ camera }) => camera?.aperture ?? null),
    within(SAME_APERTURE),
  );
  const size = among(pictures.map(sizeOf), within(SAME_SIZE));
  const again = shotsAgain(pictures);
  const reasonFor = (picture: SeriesPicture, at: number): OutOfSeries | null => {
    const { camera } = picture;
    const [ownBody, ownLens] = [taken[at]?.body ?? null, taken[at]?.lens ?? null];
    if (again.has(picture)) return 'the same shot';
    if (of !== null && ownBody !== null ? ownBody.id !== of.body : differ(bodyOf(camera), body, sameCopy)) return 'another body';
    if (of !== null && ownLens !== null ? ownLens.id !== of.lens : differ(lensOf(camera), lens, sameCopy)) return 'another lens';
    if (differ(camera?.focalLength ?? null, focalLength, within(SAME_FOCAL_LENGTH))) return 'another focal length';
    if (differ(camera?.aperture ?? null, aperture, within(SAME_APERTURE))) return 'another aperture';
    return differ(sizeOf(picture), size, within(SAME_SIZE)) ? 'another distance' : null;
  };
  return new Map(
    pictures.flatMap((picture, at) => {
      const reason = reasonFor(picture, at);
      return reason === null ? [] : [[picture.id, reason]];
    }),
  );
}

/** Those of a shot that came before them: of two names that differ in their ending alone, or of one and the same reading; never of two moments. */
function shotsAgain(pictures: readonly SeriesPicture[]): ReadonlySet<SeriesPicture> {
  const seen = new Set<string>();
  return new Set(
    pictures.filter((picture) => {
      const taken = picture.camera?.taken ?? null;
      const keys = [`${taken} named ${stemOf(picture.name)}`, ...(picture.reading.target.ok ? [`${taken} read ${figuresOf(picture)}`] : [])];
      const there = keys.some((key) => seen.has(key));
      for (const key of keys) seen.add(key);
      return there;
    }),
  );
}

const stemOf = (name: string): string => name.replace(/\.[^.]*$/, '').toLowerCase();

function figuresOf({ reading: { target, focus } }: SeriesPicture): string {
  return JSON.stringify([target.ok && [target.value.scale, target.value.roll, target.value.tilt], focus.ok && focus.value.ramp.error]);
}

interface Copy {
  readonly model: string | null;
  readonly serial: string | null;
}

const bodyOf = (camera: Photograph | null): Copy | null => camera && { model: camera.bodyModel, serial: camera.bodySerial };
const lensOf = (camera: Photograph | null): Copy | null => camera && { model: camera.lensModel, serial: camera.lensSerial };

/** How large the target stands in the picture: frames to a drawn millimetre, so that a reduced copy counts as the same distance. */
const sizeOf = ({ frame, reading }: SeriesPicture): number | null =>
  reading.target.ok ? reading.target.value.scale / Math.max(frame.width, frame.height) : null;

const same = (one: string | null, other: string | null): boolean => one === null || other === null || one === other;
const sameCopy = (one: Copy, other: Copy): boolean => same(one.model, other.model) && same(one.serial, other.serial);
const within =
  (share: number) =>
  (one: number, other: number): boolean =>
    Math.abs(one - other) <= share * Math.max(one, other);

/** What is not known speaks against nothing. */
const differ = <Value>(one: Value | null, rule: Value | null, alike: (a: Value, b: Value) => boolean): boolean =>
  one !== null && rule !== null && !alike(one, rule);

/** The one that most others are like; of several, the first. */
function among<Value>(values: readonly (Value | null)[], alike: (a: Value, b: Value) => boolean): Value | null {
  const known = values.filter((value) => value !== null);
  const counts = known.map((value) => known.filter((other) => alike(value, other)).length);
  return known[counts.indexOf(Math.max(...counts))] ?? null;
}
