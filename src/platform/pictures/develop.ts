// Decodes a picture and takes its light, strip by strip, so that no more than one strip of pixels is there at once beside the
// decoded picture and the plane. Colours are left as the file has them: converting them would bend the edges.
import { turnOf } from '../../kit/photograph/orientation.ts';
import type { PictureFault } from '../../photographs/brought.ts';
import { planeOf, type Plane } from '../../photographs/plane.ts';
import { failed, got, type Result } from '../../result.ts';
import type { OpenedPicture } from './opened.ts';
import { sizeFault } from './size.ts';

interface Developed {
  readonly plane: Plane;
  /** The whole picture, reduced. */
  readonly small: Blob;
}

/** Pixels in a strip: 8 MB of them. */
const STRIP = 2_000_000;
/** The longer side of the reduced picture: twice the widest panel's. */
const SMALL_SIDE = 720;

export async function develop({ blob, orientation }: OpenedPicture): Promise<Result<Developed, PictureFault>> {
  const bitmap = await createImageBitmap(blob, { colorSpaceConversion: 'none', imageOrientation: 'from-image' }).catch(() => null);
  if (bitmap === null) return failed('no picture');
  try {
    const { matrix, frame } = turnOf(orientation, bitmap);
    const fault = sizeFault(frame);
    if (fault !== null) return failed(fault);
    const { width, height } = frame;
    const rows = Math.max(1, Math.min(height, Math.floor(STRIP / width)));
    const strip = contextOf(width, rows);
    const light = new Float32Array(width * height);
    for (let top = 0; top < height; top += rows) {
      const here = Math.min(rows, height - top);
      const [a, b, c, d, e, f] = matrix;
      strip.setTransform(a, b, c, d, e, f - top);
      strip.drawImage(bitmap, 0, 0);
      light.set(planeOf(strip.getImageData(0, 0, width, here).data, width, here).light, top * width);
    }
    return got({ plane: { width, height, light }, small: await reduced(bitmap, orientation) });
  } catch {
    return failed('too large');
  } finally {
    bitmap.close();
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

/** Kept where the processor reads it: its pixels are read right after they are drawn. Throws where there is no room. */
function contextOf(width: number, height: number): OffscreenCanvasRenderingContext2D {
  const context = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true, alpha: false });
  if (context === null) throw new Error('There is no room for a canvas.');
  return context;
}
