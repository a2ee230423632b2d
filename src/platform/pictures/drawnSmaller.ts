// A decoded picture drawn smaller and upright. To draw all of a large bitmap takes a browser as long as it takes to measure the print in it: that is done
// once, and whatever is smaller still is drawn from there.
import { turnOf } from '../../kit/photograph/orientation.ts';

export interface DrawnSmaller {
  /** So many times smaller: a power of two, 2 at least. Each pixel is the mean of a square of its own; an odd row or column at the end is left out. */
  readonly by: (factor: number) => OffscreenCanvasRenderingContext2D;
  /** For the eye, its longer side so many pixels at most. */
  readonly within: (longerSide: number) => OffscreenCanvas;
}

/** Drawn smaller at once: where a browser takes the mean of four pixels however small it draws, so many are left out that no mark is lost. */
const AT_ONCE = 4;

/** `orientation` as Exif counts it, from 1 to 8. Its functions throw where there is no room for a canvas. */
export function drawnSmaller(bitmap: ImageBitmap, orientation: number): DrawnSmaller {
  const { matrix, frame } = turnOf(orientation, bitmap);
  const [a, b, c, d, e, f] = matrix;
  let quarter: OffscreenCanvasRenderingContext2D | null = null;

  function drawn(across: number, down: number, scale: number, quality: ImageSmoothingQuality): OffscreenCanvasRenderingContext2D {
    const context = contextOf(across, down);
    context.imageSmoothingQuality = quality;
    context.setTransform(scale * a, scale * b, scale * c, scale * d, scale * e, scale * f);
    context.drawImage(bitmap, 0, 0);
    return context;
  }

  function by(factor: number): OffscreenCanvasRenderingContext2D {
    const first = Math.min(factor, AT_ONCE);
    const anew = () => drawn(Math.floor(frame.width / first), Math.floor(frame.height / first), 1 / first, 'medium');
    let small = first === AT_ONCE ? (quarter ??= anew()) : anew();
    // Between four pixels, the plainest way of drawing is their mean.
    for (let left = factor / first; left > 1; left /= 2) {
      const { canvas } = small;
      small = contextOf(Math.floor(canvas.width / 2), Math.floor(canvas.height / 2));
      small.setTransform(0.5, 0, 0, 0.5, 0, 0);
      small.drawImage(canvas, 0, 0);
    }
    return small;
  }

  function within(longerSide: number): OffscreenCanvas {
    const scale = Math.min(1, longerSide / Math.max(frame.width, frame.height));
    const across = Math.max(1, Math.round(frame.width * scale));
    const down = Math.max(1, Math.round(frame.height * scale));
    if (scale * AT_ONCE > 1) return drawn(across, down, scale, 'high').canvas;
    const { canvas } = by(AT_ONCE);
    const context = contextOf(across, down);
    context.imageSmoothingQuality = 'high';
    context.drawImage(canvas, 0, 0, across, down);
    return context.canvas;
  }

  return { by, within };
}

/** Kept where the processor reads it: its pixels are read right after they are drawn. Throws where there is no room. */
export function contextOf(width: number, height: number): OffscreenCanvasRenderingContext2D {
  const context = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true, alpha: false });
  if (context === null) throw new Error('There is no room for a canvas.');
  context.imageSmoothingQuality = 'low';
  return context;
}
