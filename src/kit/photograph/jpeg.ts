// Where the camera data of a JPEG begins: in the application segment whose content starts with "Exif" and two zeros
// (CIPA DC-008, 4.7.2); and how large its picture is. Markers and their lengths after ITU-T T.81, B.1.1.
import { bytesFrom, type Bytes } from './bytes.ts';

const START_OF_IMAGE = 0xffd8;
const START_OF_SCAN = 0xda;
/** Frames that browsers decode: baseline, extended and progressive. Raw data is often a lossless frame, which is none of them. */
const FRAMES = [0xc0, 0xc1, 0xc2];
const APP1 = 0xe1;
const EXIF = [0x45, 0x78, 0x69, 0x66, 0, 0];
/** "ICC_PROFILE" and a zero begin the segment of a colour profile (ICC.1:2022, annex B.4). */
const APP2 = 0xe2;
const PROFILE = [0x49, 0x43, 0x43, 0x5f, 0x50, 0x52, 0x4f, 0x46, 0x49, 0x4c, 0x45, 0];
/** More segments than any camera writes before its picture. */
const MOST_SEGMENTS = 256;

/** In pixels, both at least 1. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

export const isJpeg = (file: Uint8Array): boolean => bytesFrom(file, 0, 'big').two(0) === START_OF_IMAGE;

/** The place of the TIFF header inside the segment, or null where there is none. */
export function exifInJpeg(file: Uint8Array): number | null {
  const bytes = bytesFrom(file, 0, 'big');
  const found = segmentWhere(bytes, (marker, at) => marker === APP1 && EXIF.every((byte, index) => bytes.one(at + index) === byte));
  return found === null ? null : found + EXIF.length;
}

/** Whether a colour profile stands before the picture; without one its colours are those of sRGB. */
export const hasProfile = (file: Uint8Array): boolean => {
  const bytes = bytesFrom(file, 0, 'big');
  return segmentWhere(bytes, (marker, at) => marker === APP2 && PROFILE.every((byte, index) => bytes.one(at + index) === byte)) !== null;
};

/** Width and height in pixels as they are stored, not yet turned; null where no frame that can be decoded is in reach. */
export function frameInJpeg(file: Uint8Array): PictureSize | null {
  const bytes = bytesFrom(file, 0, 'big');
  if (bytes.two(0) !== START_OF_IMAGE) return null;
  const at = segmentWhere(bytes, (marker) => FRAMES.includes(marker));
  const [height, width] = at === null ? [null, null] : [bytes.two(at + 1), bytes.two(at + 3)];
  return width === null || height === null || width * height === 0 ? null : { width, height };
}

/** Where the content of the first such segment before the scan begins. */
function segmentWhere(bytes: Bytes, wanted: (marker: number, at: number) => boolean): number | null {
  let at = 2;
  for (let segment = 0; segment < MOST_SEGMENTS; segment++) {
    while (bytes.one(at) === 0xff && bytes.one(at + 1) === 0xff) at++;
    const marker = bytes.one(at + 1);
    const length = bytes.two(at + 2);
    if (bytes.one(at) !== 0xff || marker === null || marker === START_OF_SCAN || length === null || length < 2) return null;
    if (wanted(marker, at + 4)) return at + 4;
    at += 2 + length;
  }
  return null;
}
