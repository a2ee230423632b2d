// Where the camera data of a JPEG begins: in the application segment whose content starts with "Exif" and two zeros
// (CIPA DC-008, 4.7.2). Markers and their lengths after ITU-T T.81, B.1.1.
import { bytesFrom } from './bytes.ts';

const START_OF_IMAGE = 0xffd8;
const START_OF_SCAN = 0xda;
const APP1 = 0xe1;
const EXIF = [0x45, 0x78, 0x69, 0x66, 0, 0];
/** More segments than any camera writes before its picture. */
const MOST_SEGMENTS = 256;

export const isJpeg = (file: Uint8Array): boolean => bytesFrom(file, 0, 'big').two(0) === START_OF_IMAGE;

/** The place of the TIFF header inside the segment, or null where there is none. */
export function exifInJpeg(file: Uint8Array): number | null {
  const bytes = bytesFrom(file, 0, 'big');
  let at = 2;
  for (let segment = 0; segment < MOST_SEGMENTS; segment++) {
    while (bytes.one(at) === 0xff && bytes.one(at + 1) === 0xff) at++;
    const marker = bytes.one(at + 1);
    const length = bytes.two(at + 2);
    if (bytes.one(at) !== 0xff || marker === null || marker === START_OF_SCAN || length === null || length < 2) return null;
    if (marker === APP1 && EXIF.every((byte, index) => bytes.one(at + 4 + index) === byte)) return at + 4 + EXIF.length;
    at += 2 + length;
  }
  return null;
}
