// What was typed at the bench as readings that are stored with the sweep, or one sentence that says what to enter.
import { failed, got, type Result } from '../../result.ts';
import { fits } from '../../optics/fits.ts';
import { readAperture, readIsoSpeed, readShutter } from '../../optics/exposure.ts';
import { tiltFromSides, type Room, type Tilt } from '../../optics/fourSides.ts';
import { measuredEv } from '../../optics/light.ts';
import { readDistance } from '../../optics/length.ts';
import { pixelsOnSensor, tiltFromMirror, tiltFromSpot } from '../../optics/mirror.ts';
import { FrontShare, SHARE } from '../../optics/placement.ts';
import { BenchReading, type ReadingKind } from '../../optics/setUp/reading.ts';
import { readCount } from '../../optics/quantity.ts';
import { printed, TRUE_SIZE } from '../../optics/print/printCheck.ts';
import { RAMP_LEAN, rampError, rampLean } from '../../optics/print/ramp.ts';
import { millimetres } from '../../units.ts';
import { needed, numberTyped, SCALE, type Reckoned } from './reckon.ts';
import type { Typed } from './untyped.ts';

type ReadingOf<K extends ReadingKind> = Extract<BenchReading, { reads: K }>;

const SPANS = 'Enter how many pixels of a full-size photograph the scale spans.';

/** One standard deviation of a length measured in live view, as a share of it (from memory). */
const MEASURING_ERROR = 0.005;

export function lightReading({ iso, metered, shutter }: Typed): Result<ReadingOf<'light'>> {
  const speed = needed(iso, 'Enter ISO, aperture and shutter as the camera shows them for the target.', readIsoSpeed);
  if (!speed.ok) return speed;
  const aperture = readAperture(metered);
  if (!aperture.ok) return aperture;
  const time = readShutter(shutter);
  if (!time.ok) return time;
  const shown = { iso: speed.value, aperture: aperture.value, shutter: time.value };
  return got({ reads: 'light', ...shown, ev: measuredEv(shown) });
}

export function mirrorReading({ mirror }: Typed, { rig, bench }: Reckoned): Result<ReadingOf<'mirror'>> {
  const pixels = numberTyped(mirror, 'Enter how many pixels of a full-size photograph the reflection is off the middle.');
  if (!pixels.ok) return pixels;
  if (!rig || !bench?.ok) return failed('Enter the aperture and what else the bench asks for, so that the tilt can be reckoned.');
  const offset = pixelsOnSensor(Math.abs(pixels.value), rig.pitch);
  const tilt = tiltFromMirror(bench.value.focalLength, offset);
  return tilt.ok ? got({ reads: 'mirror', offset, tilt: tilt.value }) : tilt;
}

/** The spot is sent from beside the front of the lens, near enough the thin lens itself. */
export function spotReading({ spot }: Typed, { bench }: Reckoned): Result<ReadingOf<'spot'>> {
  const offset = numberTyped(spot, 'Enter how many millimetres off its source the spot comes back.');
  if (!offset.ok) return offset;
  if (!bench?.ok) return failed('Enter the aperture and what else the bench asks for, so that the tilt can be reckoned.');
  const tilt = tiltFromSpot(bench.value.fromLens, millimetres(offset.value));
  return tilt.ok ? got({ reads: 'spot', offset: millimetres(offset.value), tilt: tilt.value }) : tilt;
}

/** What the four sides must span to be told apart, as far as the picture has room for it. */
export function roomFor({ bench }: Reckoned): Room | undefined {
  if (!bench?.ok || !bench.value.target.ok) return undefined;
  const { fromLens, target } = bench.value;
  return { fromLens, seen: target.value.seen, error: MEASURING_ERROR };
}

/** The tilt by the four sides; the rectangle is the corner marks of the printed target unless another was typed. */
export function sidesTilt(typed: Typed, reckoned: Reckoned, corners: { width: number; height: number }): Result<Tilt> {
  const { bench, print } = reckoned;
  if (!bench?.ok) return failed('Enter the aperture and what else the bench asks for, so that the tilt can be reckoned.');
  const sides = sidesTyped(typed);
  const factor = print?.factor ?? TRUE_SIZE;
  const size = (text: string, drawn: number) =>
    text.trim() === '' ? got(printed(millimetres(drawn), factor)) : numberTyped(text, 'Enter the rectangle\u2019s width and height in millimetres.');
  const width = size(typed.width, corners.width);
  if (!width.ok) return width;
  const height = size(typed.height, corners.height);
  if (!height.ok) return height;
  if (!(width.value > 0 && height.value > 0)) return failed('Enter the rectangle\u2019s width and height in millimetres, each above zero.');
  return tiltFromSides(sides, { width: millimetres(width.value), height: millimetres(height.value), fromLens: bench.value.fromLens }, MEASURING_ERROR);
}

const sidesTyped = ({ left, right, top, bottom }: Typed) => {
  const number = (text: string): number => (text.trim() === '' ? Number.NaN : Number(text.trim().replace(',', '.')));
  return { left: number(left), right: number(right), top: number(top), bottom: number(bottom) };
};

/** The reading of this kind from what is typed. */
export function readingOf(
  kind: Exclude<ReadingKind, 'live view'>,
  typed: Typed,
  reckoned: Reckoned,
  corners: { width: number; height: number },
): Result<BenchReading> {
  switch (kind) {
    case 'old value': {
      const value = numberTyped(typed.old, 'Enter the correction that is stored now, such as \u22123.');
      return value.ok ? checked({ reads: kind, value: value.value }, 'Enter a whole number of the scale, such as \u22123.') : value;
    }
    case 'print': {
      const length = numberTyped(typed.printed, 'Enter the printed scale\u2019s length in millimetres, such as 100.');
      if (!length.ok) return length;
      if (reckoned.faults.printed) return failed(reckoned.faults.printed);
      return checked({ reads: kind, drawn: SCALE, measured: length.value });
    }
    case 'distance': {
      const distance = needed(typed.distance, 'Enter the distance you measured.', (text) => readDistance(text, reckoned.unit));
      if (!distance.ok) return distance;
      return checked({ reads: kind, distance: distance.value, from: typed.from });
    }
    case 'light':
      return lightReading(typed);
    case 'mirror':
      return mirrorReading(typed, reckoned);
    case 'spot':
      return spotReading(typed, reckoned);
    case 'placement':
      return placementReading(typed);
    case 'sides': {
      const tilt = sidesTilt(typed, reckoned, corners);
      if (!tilt.ok) return tilt;
      return checked({ reads: kind, ...sidesTyped(typed), tilt: tilt.value.whole, uncertainty: tilt.value.uncertainty });
    }
    case 'magnification': {
      const pixels = needed(typed.scalePixels, SPANS, (text) => {
        const count = readCount(text);
        return count === null ? failed(SPANS) : got(count);
      });
      if (!pixels.ok) return pixels;
      const length = printed(SCALE, reckoned.print?.factor ?? TRUE_SIZE);
      return reckoned.faults.scalePixels ? failed(reckoned.faults.scalePixels) : checked({ reads: kind, length, pixels: pixels.value });
    }
    case 'temperature': {
      const celsius = numberTyped(typed.celsius, 'Enter the temperature in degrees Celsius, such as 20.');
      return celsius.ok ? checked({ reads: kind, celsius: celsius.value }) : celsius;
    }
  }
}

/** What the ramp's sharpest line tells, in millimetres at the target; positive is behind it. */
export function rampErrorTyped({ rampReading, rampFace, rampSetBack }: Typed, { print }: Reckoned): Result<number> {
  const line = numberTyped(rampReading, 'Enter the number beside the sharpest line, with its sign.');
  if (!line.ok) return line;
  const factor = print?.factor ?? TRUE_SIZE;
  if (rampSetBack.trim() === '') return rampError(line.value, RAMP_LEAN, factor);
  const back = numberTyped(rampSetBack, 'Enter how far the ramp’s upper end stands back, in millimetres.');
  if (!back.ok) return back;
  const face = numberTyped(rampFace, 'Enter the length of the ramp in millimetres.');
  if (!face.ok) return face;
  const lean = rampLean(millimetres(back.value), millimetres(face.value));
  return lean.ok ? rampError(line.value, lean.value, factor) : lean;
}

export function placementReading({ share }: Typed): Result<ReadingOf<'placement'>> {
  const percent = numberTyped(share, SHARE);
  if (!percent.ok) return percent;
  const part = fits(FrontShare, percent.value / 100);
  return part.ok ? got({ reads: 'placement', share: part.value }) : part;
}

function checked(reading: unknown, sentence?: string): Result<BenchReading> {
  const fitting = fits(BenchReading, reading);
  return fitting.ok || sentence === undefined ? fitting : failed(sentence);
}
