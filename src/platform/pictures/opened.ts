// A file becomes what the browser can decode: itself, or the full-size JPEG inside a raw file. What is too large is refused
// before anything is decoded.
import { byteOrderOf } from '../../kit/photograph/directory.ts';
import { pictureSizeOf } from '../../kit/photograph/pictureSize.ts';
import { exifInJpeg, frameInJpeg, hasProfile, isJpeg } from '../../kit/photograph/jpeg.ts';
import { FIRST_BYTES, readPhotograph, type Photograph } from '../../kit/photograph/photograph.ts';
import { largestPreview } from '../../kit/photograph/preview.ts';
import type { PictureFault } from '../../photographs/brought.ts';
import { writtenPicture, type WrittenPicture } from '../../kit/photograph/written.ts';
import { failed, got, type Result } from '../../result.ts';
import { sizeFault } from './size.ts';

export interface OpenedPicture {
  readonly blob: Blob;
  /** How it must still be turned, beyond what its own file says. */
  readonly orientation: number;
  /** A JPEG without a colour profile: there is nothing to convert, and a browser that need not keep from it decodes more quickly. */
  readonly unprofiled: boolean;
  readonly camera: Photograph | null;
  /** What the camera wrote of the picture itself; null of a raw file, whose picture is a part of it. */
  readonly written: WrittenPicture | null;
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
    return fault === null ? got({ blob: file, orientation: 1, unprofiled: isUnprofiled(first), camera, written: writtenPicture(first) }) : failed(fault);
  } catch {
    return failed('file unread');
  }
}

const isUnprofiled = (file: Uint8Array): boolean => isJpeg(file) && frameInJpeg(file) !== null && !hasProfile(file);

async function openRaw(file: Blob, camera: Photograph | null): Promise<Result<OpenedPicture, PictureFault>> {
  if (file.size > LARGEST_RAW) return failed('too large');
  const bytes = new Uint8Array(await file.arrayBuffer());
  const preview = largestPreview(bytes);
  if (!preview.ok) return failed(preview.fault === 'no raw file' ? 'no picture' : preview.fault);
  const { from, length, frame, orientation } = preview.value;
  const fault = sizeFault(frame);
  if (fault !== null) return failed(fault);
  const saysItself = exifInJpeg(bytes.subarray(from, from + length)) !== null;
  return got({
    blob: file.slice(from, from + length, 'image/jpeg'),
    orientation: saysItself ? 1 : orientation,
    unprofiled: isUnprofiled(bytes.subarray(from, from + length)),
    camera,
    written: null,
  });
}
