// What must be known of the camera to tell how far off focus fell: from the photograph itself first, then from the situation it
// is of, then from the body and lens of the kit that took it.
import type { Kit } from '../kit/kit.ts';
import { widestAt } from '../kit/lens.ts';
import { takenWith } from '../kit/photograph/offers.ts';
import type { PictureSize } from '../kit/photograph/jpeg.ts';
import type { Photograph } from '../kit/photograph/photograph.ts';
import type { PrintFactor } from '../optics/print/printCheck.ts';
import type { WrittenPicture } from '../kit/photograph/written.ts';
import { fNumber, type FNumber } from '../optics/quantity.ts';
import type { Sensor } from '../optics/sensor.ts';
import type { Millimetres } from '../units.ts';

export interface CameraFacts {
  readonly focalLength: Millimetres | null;
  readonly aperture: FNumber | null;
  readonly sensor: Sensor | null;
  /** The picture's size as the camera wrote it; null where it did not. */
  readonly frame: PictureSize | null;
}

/** What must be known beside the picture itself. */
export interface PictureFacts extends CameraFacts {
  /** Printed length over drawn length, of target and ramp alike: they come out of one printer, by the same settings. */
  readonly printed: PrintFactor;
}

/** `written`: what the camera wrote of the picture itself. `situation`: the id of the one the picture is of, where the person came from there. The lens counts as opened as wide as it goes. */
export function cameraFacts(photograph: Photograph | null, written: WrittenPicture | null, kit: Kit, situation: string | null): CameraFacts {
  const of = kit.situations.find(({ id }) => id === situation) ?? null;
  const taken = photograph === null ? { body: null, lens: null } : takenWith(photograph, kit);
  const body = kit.bodies.find(({ id }) => id === of?.body) ?? taken.body;
  const lens = kit.lenses.find(({ id }) => id === of?.lens) ?? taken.lens;
  const focalLength = photograph?.focalLength ?? of?.focalLength ?? null;
  const widest = lens === null || focalLength === null ? null : widestAt(lens, focalLength);
  const aperture = photograph?.aperture ?? widest;
  // What a camera writes of its sensor is rounded more coarsely than what stands in its manual.
  const sensor = body?.sensor ?? written?.sensor ?? null;
  return { focalLength, aperture: aperture === null ? null : fNumber(aperture), sensor, frame: written?.frame ?? null };
}
