// What a photograph tells of the kit it was taken with: body, lens, their serials, focal length, aperture, distance
// and date. Only its first part is looked at, nothing leaves the machine, and what is missing or odd is null.
import * as v from 'valibot';
import { minutesEast, momentOf } from '../../calendar.ts';
import { failed, got, type Result } from '../../result.ts';
import { millimetres, type Millimetres, type Moment } from '../../units.ts';
import { Distance, FocalLength } from '../lengths.ts';
import { FocalRange } from '../lens.ts';
import { fNumberOf } from './apex.ts';
import { exifInJpeg, isJpeg } from './jpeg.ts';
import { TAG } from './tags.ts';
import { readTiff, type Fields, type Fraction } from './tiff.ts';

/** The part of a file that is looked at: hand over this much of it, however large it is. */
export const FIRST_BYTES = 262_144;

export interface Photograph {
  readonly bodyModel: string | null;
  readonly bodySerial: string | null;
  readonly lensModel: string | null;
  readonly lensSerial: string | null;
  readonly focalLength: Millimetres | null;
  /** The f-number in use, and the widest at this focal length. */
  readonly aperture: number | null;
  readonly widest: number | null;
  /** Focal range of the lens, and its widest f-number at each end. */
  readonly lensFocal: FocalRange | null;
  readonly lensWidest: { readonly from: number; readonly to: number } | null;
  readonly distance: Millimetres | null;
  readonly taken: Moment | null;
}

export type PhotographFault = 'no photograph' | 'no camera data' | 'camera data unread';

/**
 * Reads the first bytes of a JPEG or a TIFF-based raw. `east`: minutes ahead of UTC, for a camera that does not say.
 */
export function readPhotograph(file: Uint8Array, east: number): Result<Photograph, PhotographFault> {
  const first = file.subarray(0, FIRST_BYTES);
  const jpeg = isJpeg(first);
  const from = jpeg ? exifInJpeg(first) : 0;
  const fields = from === null ? null : readTiff(first, from);
  if (!fields) return failed(jpeg ? 'no camera data' : 'no photograph');
  const photograph = photographOf(fields, east);
  const empty = Object.values(photograph).every((value) => value === null);
  return empty ? failed('camera data unread') : got(photograph);
}

function photographOf(fields: Fields, east: number): Photograph {
  const [focalFrom, focalTo, widestFrom, widestTo] = fields.fractions(TAG.lensSpecification).map(valueOf);
  const one = (tag: number) => valueOf(fields.fractions(tag)[0]);
  const apex = one(TAG.maxApertureValue);
  return {
    bodyModel: named(fields.text(TAG.model)),
    bodySerial: named(fields.text(TAG.bodySerialNumber)),
    lensModel: named(fields.text(TAG.lensModel)),
    lensSerial: named(fields.text(TAG.lensSerialNumber)),
    focalLength: lengthIn(FocalLength, one(TAG.focalLength), 1),
    aperture: aperture(one(TAG.fNumber)),
    widest: apex === null ? null : aperture(fNumberOf(apex)),
    lensFocal: rangeOf(focalFrom ?? null, focalTo ?? null),
    lensWidest: bothOf(aperture(widestFrom ?? null), aperture(widestTo ?? null)),
    distance: lengthIn(Distance, one(TAG.subjectDistance), 1000),
    taken: takenAt(fields, east),
  };
}

/** Zero stands for unknown, and the greatest number for infinity (CIPA DC-008, SubjectDistance). */
function valueOf(fraction: Fraction | undefined): number | null {
  if (!fraction || fraction.under === 0 || fraction.over === 0 || fraction.over === 0xffffffff) return null;
  return fraction.over / fraction.under;
}

const named = (text: string | null): string | null => (text === null ? null : text.slice(0, 60).trim());

function aperture(value: number | null): number | null {
  return value === null || value < 0.5 || value > 64 ? null : Math.round(value * 10) / 10;
}

/** To the tenth of a millimetre, because the fractions of cameras are finer than they are true. */
function lengthIn(schema: typeof FocalLength, value: number | null, times: number): Millimetres | null {
  const read = v.safeParse(schema, value === null ? null : Math.round(value * times * 10) / 10);
  return read.success ? read.output : null;
}

function rangeOf(from: number | null, to: number | null): FocalRange | null {
  const read = v.safeParse(FocalRange, from === null || to === null ? null : { from: millimetres(from), to: millimetres(to) });
  return read.success ? read.output : null;
}

const bothOf = (from: number | null, to: number | null) => (from === null || to === null ? null : { from, to });

function takenAt(fields: Fields, east: number): Moment | null {
  const written = fields.text(TAG.dateTimeOriginal) ?? fields.text(TAG.dateTime);
  const found = /^(\d{4}):(\d{2}):(\d{2}) (\d{2}):(\d{2}):(\d{2})/.exec(written ?? '');
  if (!found) return null;
  const part = (index: number) => Number(found[index]);
  const time = { year: part(1), month: part(2), day: part(3), hour: part(4), minute: part(5), second: part(6) };
  return momentOf(time, minutesEast(fields.text(TAG.offsetTimeOriginal) ?? '') ?? east);
}
