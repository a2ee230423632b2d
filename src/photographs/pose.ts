// How a print stands to the camera, from where its millimetres fall in the picture and what the camera is: the columns of the
// homography, freed of the camera, are the print's axes and its middle, up to one scale (Z. Zhang, A Flexible New Technique for
// Camera Calibration, IEEE PAMI 22:1330, 2000, section 3.1). The optical axis is taken to meet the picture in its middle, so a
// picture that was cut to one side gives a wrong tilt.
import { millimetres, type Millimetres } from '../units.ts';
import { fromRadians, type Degrees } from '../optics/quantity.ts';
import type { Homography } from './homography.ts';
import { affineAt } from './localScale.ts';

export interface CameraKnown {
  readonly focalLength: Millimetres;
  readonly pitch: Millimetres;
  /** Of the picture, in pixels. */
  readonly width: number;
  readonly height: number;
}

export interface PrintPose {
  /** From the lens to the point that millimetres count from, along the line of sight. */
  readonly distance: Millimetres;
  /** Between the print's normal and the optical axis, from 0 to 90. */
  readonly tilt: Degrees;
}

export function poseOf(toPicture: Homography, { focalLength, pitch, width, height }: CameraKnown): PrintPose {
  // The lens stands a little more than its focal length off the sensor: f (1 + m).
  const { scale } = affineAt(toPicture, { x: 0, y: 0 });
  const image = (focalLength * (1 + scale * pitch)) / pitch;
  const [a, b, c, d, e, f, g, h, i] = toPicture;
  const freed = (x: number, y: number, w: number): readonly [number, number, number] => [(x - (width / 2) * w) / image, (y - (height / 2) * w) / image, w];
  const [right, down, middle] = [freed(a, d, g), freed(b, e, h), freed(c, f, i)];
  const unit = (Math.hypot(...right) + Math.hypot(...down)) / 2;
  const normal = [right[1] * down[2] - right[2] * down[1], right[2] * down[0] - right[0] * down[2], right[0] * down[1] - right[1] * down[0]] as const;
  return {
    distance: millimetres(Math.hypot(...middle) / unit),
    tilt: fromRadians(Math.acos(Math.min(1, Math.abs(normal[2]) / Math.hypot(...normal)))),
  };
}
