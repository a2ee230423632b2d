// What the camera wrote of the picture itself: its size as it left the camera, and by it the sensor's, so that a file that was
// made smaller or cropped later is told (CIPA DC-008, PixelXDimension and PixelYDimension, FocalPlaneXResolution and its unit).
import { millimetres, type Millimetres } from '../../units.ts';
import { exifInJpeg, isJpeg, type PictureSize } from './jpeg.ts';
import { FIRST_BYTES } from './photograph.ts';
import { TAG } from './tags.ts';
import { readTiff, type Fields } from './tiff.ts';

interface SensorSides {
  readonly width: Millimetres;
  readonly height: Millimetres;
}

export interface WrittenPicture {
  /** As it was stored, in pixels. */
  readonly frame: PictureSize;
  /** The longer side is the width. Null where the camera did not write how dense its pixels are, or what makes no sensor. */
  readonly sensor: SensorSides | null;
}

/** Millimetres of the units that a density is counted in: inch, centimetre, and what some cameras write for millimetre and micrometre (from memory). */
const UNITS: Readonly<Record<number, number>> = { 2: 25.4, 3: 10, 4: 1, 5: 0.001 };
/** Sides in millimetres, and how far the density upright may be from the level one: pixels are square. */
const LEAST_SIDE = 4;
const MOST_SIDE = 100;
const SQUARE = 0.03;

/** Of a JPEG's first bytes, or a TIFF-based file's; null where they do not tell the picture's size. */
export function writtenPicture(file: Uint8Array): WrittenPicture | null {
  const first = file.subarray(0, FIRST_BYTES);
  const from = isJpeg(first) ? exifInJpeg(first) : 0;
  const fields = from === null ? null : readTiff(first, from);
  const [width, height] = [fields?.whole(TAG.pixelWidth) ?? 0, fields?.whole(TAG.pixelHeight) ?? 0];
  if (fields === null || width === 0 || height === 0) return null;
  return { frame: { width, height }, sensor: sensorOf(fields, { width, height }) };
}

function sensorOf(fields: Fields, { width, height }: PictureSize): SensorSides | null {
  const unit = UNITS[fields.whole(TAG.densityUnit) ?? 2];
  const [across, down] = [TAG.densityAcross, TAG.densityDown].map((tag) => {
    const [density] = fields.fractions(tag);
    return density === undefined || density.under === 0 ? 0 : density.over / density.under;
  }) as [number, number];
  if (unit === undefined || !(across > 0 && down > 0) || Math.abs(across / down - 1) > SQUARE) return null;
  const sides = [(width / across) * unit, (height / down) * unit].sort((a, b) => b - a) as [number, number];
  return sides[1] >= LEAST_SIDE && sides[0] <= MOST_SIDE ? { width: millimetres(sides[0]), height: millimetres(sides[1]) } : null;
}
