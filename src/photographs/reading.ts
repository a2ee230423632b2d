// What is read off one picture. So far only its size: the parts that find and measure join here.
import type { Plane } from './plane.ts';
export interface PictureReading {
  readonly pixels: number;
  readonly places: readonly { readonly x: number; readonly y: number }[];
}
export const readPicture = (plane: Plane): PictureReading => ({ pixels: plane.light.length, places: [] });
