// Decodes a picture. Colours are left as the file has them: converting them would bend the edges.
import { turnOf } from '../../kit/photograph/orientation.ts';
import type { PictureFault } from '../../photographs/brought.ts';
import type { PixelSource } from '../../photographs/pixelSource.ts';
import { failed, got, type Result } from '../../result.ts';
import { bitmapPicture, contextOf } from './bitmapPicture.ts';
import type { OpenedPicture } from './opened.ts';
import { sizeFault } from './size.ts';

interface Developed {
  readonly picture: PixelSource;
  /** The whole picture, reduced. */
  readonly small: Promise<Blob>;
  /** Lets go of the decoded picture; nothing more is read of it then. */
  readonly close: () => void;
}

/** The longer side of the reduced picture: twice the widest panel's. */
const SMALL_SIDE = 720;

export async function develop({ blob, orientation, unprofiled }: OpenedPicture): Promise<Result<Developed, PictureFault>> {
  const colorSpaceConversion = unprofiled ? 'default' : 'none';
  const bitmap = await createImageBitmap(blob, { colorSpaceConversion, imageOrientation: 'from-image' }).catch(() => null);
  if (bitmap === null) return failed('no picture');
  const fault = sizeFault(turnOf(orientation, bitmap).frame);
  if (fault !== null) {
    bitmap.close();
    return failed(fault);
  }
  try {
    return got({ picture: bitmapPicture(bitmap, orientation), small: reduced(bitmap, orientation), close: () => bitmap.close() });
  } catch {
    bitmap.close();
    return failed('too large');
  }
}

function reduced(bitmap: ImageBitmap, orientation: number): Promise<Blob> {
  const scale = Math.min(1, SMALL_SIDE / Math.max(bitmap.width, bitmap.height));
  const size = { width: Math.max(1, Math.round(bitmap.width * scale)), height: Math.max(1, Math.round(bitmap.height * scale)) };
  const { matrix, frame } = turnOf(orientation, size);
  const context = contextOf(frame.width, frame.height);
  context.imageSmoothingQuality = 'high';
  context.setTransform(...matrix);
  context.drawImage(bitmap, 0, 0, size.width, size.height);
  return context.canvas.convertToBlob({ type: 'image/jpeg', quality: 0.85 });
}
