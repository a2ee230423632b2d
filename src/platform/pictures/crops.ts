// The crops of a reading as files that the panel can show; without loss, because every pixel counts at 100 %.
import type { Crop } from '../../photographs/crop.ts';

export function asFile({ width, height, rgba }: Crop): Promise<Blob> {
  const canvas = new OffscreenCanvas(width, height);
  canvas.getContext('2d', { alpha: false })?.putImageData(new ImageData(rgba, width, height), 0, 0);
  return canvas.convertToBlob({ type: 'image/png' });
}
