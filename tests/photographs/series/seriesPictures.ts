// Pictures of a series as if they were read, for the tests of what follows from them.
import type { Photograph } from '../../../src/kit/photograph/photograph.ts';
import { degrees } from '../../../src/optics/quantity.ts';
import type { FocusReading } from '../../../src/photographs/focusReading.ts';
import type { SeriesPicture } from '../../../src/photographs/series/seriesPicture.ts';
import { failed, got } from '../../../src/result.ts';
import { millimetres, moment } from '../../../src/units.ts';

/** Of the pictures below, in millimetres. */
export const READ_STEP = 5;
const DEPTH = { front: millimetres(40), behind: millimetres(40), total: millimetres(80) };

export function focusAt(error: number, doubt = 1): FocusReading {
  const interval = { low: error - 1.96 * doubt, high: error + 1.96 * doubt };
  return {
    ramp: { error, interval, lies: 'on the target', leastBlur: 1, growth: 1, readings: [] },
    depth: DEPTH,
    share: Math.abs(error) / 40,
    step: millimetres(READ_STEP),
    is: 'sharp',
    outline: [],
  };
}

const CAMERA: Photograph = {
  bodyModel: 'Model B',
  bodySerial: '1',
  lensModel: 'Model L',
  lensSerial: '2',
  focalLength: millimetres(85),
  aperture: 1.8,
  widest: 1.8,
  lensFocal: null,
  lensWidest: null,
  distance: null,
  taken: moment(0),
};

interface Told {
  /** Millimetres behind the target; null where it cannot be told. */
  readonly error?: number | null;
  readonly camera?: Partial<Photograph> | null;
  readonly name?: string;
  readonly scale?: number;
  readonly found?: boolean;
}

/** Named by its place, taken a minute after the one before. */
export function seriesPicture(place: number, { error = 0, camera = {}, name = `P${place}.JPG`, scale = 5, found = true }: Told = {}): SeriesPicture {
  return {
    id: `p${place}`,
    name,
    frame: { width: 4000, height: 6000 },
    camera: camera === null ? null : { ...CAMERA, taken: moment(60_000 * place), ...camera },
    reading: {
      target: found
        ? got({ outline: [], scale, roll: degrees(0), tilt: degrees(0), resized: null, motion: { is: 'alike' }, edges: [], compared: [] })
        : failed({ is: 'no print' }),
      focus: error === null || !found ? failed({ is: 'no target' }) : got(focusAt(error)),
    },
  };
}
