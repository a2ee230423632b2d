// What was entered at the bench as readings that are stored with the sweep, or what is still to be entered.
import { failed, got, type Result } from '../../result.ts';
import type { BenchFault, PlainFault } from '../../optics/fault.ts';
import { fits } from '../../optics/fits.ts';
import { tiltFromSides, type Room, type Tilt } from '../../optics/fourSides.ts';
import { measuredEv } from '../../optics/light.ts';
import { pixelsOnSensor, tiltFromMirror, tiltFromSpot } from '../../optics/mirror.ts';
import { BenchReading, type ReadingKind } from '../../optics/setUp/reading.ts';
import { printed, TRUE_SIZE } from '../../optics/print/printCheck.ts';
import { SCALE } from '../../optics/print/target.ts';
import { rampError, rampLean } from '../../optics/print/ramp.ts';
import { RAMP_LEAN } from '../../optics/print/rampLayout.ts';
import { millimetres } from '../../units.ts';
import type { Entered } from './fields.ts';
import { numberOf, type BenchEntry } from './entry.ts';
import { needed, type Reckoned } from './reckon.ts';

type ReadingOf<K extends ReadingKind> = Extract<BenchReading, { reads: K }>;

/** One standard deviation of a length measured in live view, as a share of it (from memory). */
const MEASURING_ERROR = 0.005;

export function lightReading({ iso, metered, shutter }: Entered): Result<ReadingOf<'light'>, BenchFault> {
  const speed = needed(iso, 'no exposure');
  if (!speed.ok) return speed;
  const aperture = needed(metered, 'no aperture');
  if (!aperture.ok) return aperture;
  const time = needed(shutter, 'no shutter');
  if (!time.ok) return time;
  const shown = { iso: speed.value, aperture: aperture.value, shutter: time.value };
  return got({ reads: 'light', ...shown, ev: measuredEv(shown) });
}

export function mirrorReading({ mirror }: Entered, { rig, bench }: Reckoned): Result<ReadingOf<'mirror'>, BenchFault> {
  const pixels = needed(mirror, 'no reflection');
  if (!pixels.ok) return pixels;
  if (!rig || !bench?.ok) return failed({ is: 'tilt without a rig' });
  const offset = pixelsOnSensor(Math.abs(pixels.value), rig.pitch);
  const tilt = tiltFromMirror(bench.value.focalLength, offset);
  return tilt.ok ? got({ reads: 'mirror', offset, tilt: tilt.value }) : tilt;
}

/** The spot is sent from beside the front of the lens, near enough the thin lens itself. */
export function spotReading({ spot }: Entered, { bench }: Reckoned): Result<ReadingOf<'spot'>, BenchFault> {
  const offset = needed(spot, 'no spot');
  if (!offset.ok) return offset;
  if (!bench?.ok) return failed({ is: 'tilt without a rig' });
  const tilt = tiltFromSpot(bench.value.fromLens, millimetres(offset.value));
  return tilt.ok ? got({ reads: 'spot', offset: millimetres(offset.value), tilt: tilt.value }) : tilt;
}

/** What the four sides must span to be told apart, as far as the picture has room for it. */
export function roomFor({ bench }: Reckoned): Room | undefined {
  if (!bench?.ok || !bench.value.target.ok) return undefined;
  const { fromLens, target } = bench.value;
  return { fromLens, seen: target.value.seen, error: MEASURING_ERROR };
}

/** The tilt by the four sides; the rectangle is the corner marks of the printed target unless another was entered. */
export function sidesTilt(entered: Entered, reckoned: Reckoned, corners: { width: number; height: number }): Result<Tilt, BenchFault> {
  const { bench, print } = reckoned;
  if (!bench?.ok) return failed({ is: 'tilt without a rig' });
  const sides = sidesEntered(entered);
  const factor = print?.factor ?? TRUE_SIZE;
  const size = (entry: BenchEntry<number> | null, drawn: number) => (entry === null ? got(printed(millimetres(drawn), factor)) : entry.read);
  const width = size(entered.width, corners.width);
  if (!width.ok) return width;
  const height = size(entered.height, corners.height);
  if (!height.ok) return height;
  if (!(width.value > 0 && height.value > 0)) return failed({ is: 'rectangle of nothing' });
  return tiltFromSides(sides, { width: millimetres(width.value), height: millimetres(height.value), fromLens: bench.value.fromLens }, MEASURING_ERROR);
}

const sidesEntered = ({ left, right, top, bottom }: Entered) => ({
  left: numberOf(left),
  right: numberOf(right),
  top: numberOf(top),
  bottom: numberOf(bottom),
});

/** The reading of this kind from what is entered. */
export function readingOf(
  kind: Exclude<ReadingKind, 'live view'>,
  entered: Entered,
  reckoned: Reckoned,
  corners: { width: number; height: number },
): Result<BenchReading, BenchFault> {
  switch (kind) {
    case 'old value': {
      const value = needed(entered.old, 'no stored correction');
      return value.ok ? checked({ reads: kind, value: value.value }, 'no such correction') : value;
    }
    case 'print': {
      const length = needed(entered.printed, 'no printed length');
      if (!length.ok) return length;
      if (reckoned.faults.printed) return failed(reckoned.faults.printed);
      return checked({ reads: kind, drawn: SCALE, measured: length.value });
    }
    case 'distance': {
      const distance = needed(entered.distance, 'no measured distance');
      if (!distance.ok) return distance;
      return checked({ reads: kind, distance: distance.value, from: entered.picks.from });
    }
    case 'light':
      return lightReading(entered);
    case 'mirror':
      return mirrorReading(entered, reckoned);
    case 'spot':
      return spotReading(entered, reckoned);
    case 'placement':
      return placementReading(entered);
    case 'sides': {
      const tilt = sidesTilt(entered, reckoned, corners);
      if (!tilt.ok) return tilt;
      return checked({ reads: kind, ...sidesEntered(entered), tilt: tilt.value.whole, uncertainty: tilt.value.uncertainty });
    }
    case 'magnification': {
      const pixels = needed(entered.scalePixels, 'no pixels spanned');
      if (!pixels.ok) return pixels;
      const length = printed(SCALE, reckoned.print?.factor ?? TRUE_SIZE);
      return reckoned.faults.scalePixels ? failed(reckoned.faults.scalePixels) : checked({ reads: kind, length, pixels: pixels.value });
    }
    case 'temperature': {
      const celsius = needed(entered.celsius, 'no temperature');
      return celsius.ok ? checked({ reads: kind, celsius: celsius.value }) : celsius;
    }
  }
}

/** What the ramp's sharpest line tells, in millimetres at the target; positive is behind it. */
export function rampErrorEntered({ rampReading, rampFace, rampSetBack }: Entered, { print }: Reckoned): Result<number, BenchFault> {
  const line = needed(rampReading, 'no ramp line');
  if (!line.ok) return line;
  const factor = print?.factor ?? TRUE_SIZE;
  if (rampSetBack === null) return rampError(line.value, RAMP_LEAN, factor);
  const back = rampSetBack.read;
  if (!back.ok) return back;
  const face = needed(rampFace, 'no ramp length');
  if (!face.ok) return face;
  const lean = rampLean(millimetres(back.value), millimetres(face.value));
  return lean.ok ? rampError(line.value, lean.value, factor) : lean;
}

export function placementReading({ share }: Entered): Result<ReadingOf<'placement'>, BenchFault> {
  const part = needed(share, 'no share');
  return part.ok ? got({ reads: 'placement', share: part.value }) : part;
}

function checked(reading: unknown, otherwise?: PlainFault): Result<BenchReading, BenchFault> {
  const fitting = fits(BenchReading, reading);
  return fitting.ok || otherwise === undefined ? fitting : failed({ is: otherwise });
}
