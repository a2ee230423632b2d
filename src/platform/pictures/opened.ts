// A file becomes what the browser can decode: itself, or the full-size JPEG inside a raw file. What is too large is refused
// before anything is decoded.
import { byteOrderOf } from '../../kit/photograph/directory.ts';
import { pictureSizeOf } from '../../kit/photograph/pictureSize.ts';
import { exifInJpeg } from '../../kit/photograph/jpeg.ts';
import { FIRST_BYTES, readPhotograph, type Photograph } from '../../kit/photograph/photograph.ts';
import { largestPreview } from '../../kit/photograph/preview.ts';
import type { PictureFault } from '../../photographs/brought.ts';
import { failed, got, type Result } from '../../result.ts';
import { sizeFault } from './size.ts';

export interface OpenedPicture {
  readonly blob: Blob;
  /** How it must still be turned, beyond what its own file says. */
  readonly orientation: number;
  readonly camera: Photograph | null;
}

/** A raw file is read whole, to find the picture in it: a larger one is none. */
const LARGEST_RAW = 400_000_000;

export async function openPicture(file: Blob, east: number): Promise<Result<OpenedPicture, PictureFault>> {
  try {
    const first = new Uint8Array(await file.slice(0, FIRST_BYTES).arrayBuffer());
    const read = readPhotograph(first, east);
    const camera = read.ok ? read.value : null;
    if (byteOrderOf(first, 0) !== null) return await openRaw(file, camera);
    const frame = pictureSizeOf(first);
    const fault = frame && sizeFault(frame);
    return fault === null ? got({ blob: file, orientation: 1, camera }) : failed(fault);
  } catch {
    return failed('file unread');
  }
}

async function openRaw(file: Blob, camera: Photograph | null): Promise<Result<OpenedPicture, PictureFault>> {
  if (file.size > LARGEST_RAW) return failed('too large');
  const bytes = new Uint8Array(await file.arrayBuffer());
  const preview = largestPreview(bytes);
  if (!preview.ok) return failed(preview.fault === 'no raw file' ? 'no picture' : preview.fault);
  const { from, length, frame, orientation } = preview.value;
  const fault = sizeFault(frame);
  if (fault !== null) return failed(fault);
  const saysItself = exifInJpeg(bytes.subarray(from, from + length)) !== null;
  return got({ blob: file.slice(from, from + length, 'image/jpeg'), orientation: saysItself ? 1 : orientation, camera });
}
