// What was typed at the bench as readings that are stored with the sweep, or what is still to be entered.
import { answered, cannot, type Answer } from '../../result.ts';
import type { BenchFault, PlainFault } from '../../optics/fault.ts';
import { fits } from '../../optics/fits.ts';
import { readAperture, readIsoSpeed, readShutter } from '../../optics/exposure.ts';
import { tiltFromSides, type Room, type Tilt } from '../../optics/fourSides.ts';
import { measuredEv } from '../../optics/light.ts';
import { readDistance } from '../../optics/length.ts';
import { pixelsOnSensor, tiltFromMirror, tiltFromSpot } from '../../optics/mirror.ts';
import { FrontShare } from '../../optics/placement.ts';
import { BenchReading, type ReadingKind } from '../../optics/setUp/reading.ts';
import { readCount } from '../../optics/quantity.ts';
import { printed, TRUE_SIZE } from '../../optics/print/printCheck.ts';
import { SCALE } from '../../optics/print/target.ts';
import { RAMP_LEAN, rampError, rampLean } from '../../optics/print/ramp.ts';
import { millimetres } from '../../units.ts';
import { needed, numberTyped, type Reckoned } from './reckon.ts';
import type { Typed } from './untyped.ts';

type ReadingOf<K extends ReadingKind> = Extract<BenchReading, { reads: K }>;

/** One standard deviation of a length measured in live view, as a share of it (from memory). */
const MEASURING_ERROR = 0.005;

export function lightReading({ iso, metered, shutter }: Typed): Answer<ReadingOf<'light'>, BenchFault> {
  const speed = needed(iso, 'no exposure', readIsoSpeed);
  if (!speed.ok) return speed;
  const aperture = readAperture(metered);
  if (!aperture.ok) return aperture;
  const time = readShutter(shutter);
  if (!time.ok) return time;
  const shown = { iso: speed.value, aperture: aperture.value, shutter: time.value };
  return answered({ reads: 'light', ...shown, ev: measuredEv(shown) });
}

export function mirrorReading({ mirror }: Typed, { rig, bench }: Reckoned): Answer<ReadingOf<'mirror'>, BenchFault> {
  const pixels = numberTyped(mirror, 'no reflection');
  if (!pixels.ok) return pixels;
  if (!rig || !bench?.ok) return cannot({ is: 'tilt without a rig' });
  const offset = pixelsOnSensor(Math.abs(pixels.value), rig.pitch);
  const tilt = tiltFromMirror(bench.value.focalLength, offset);
  return tilt.ok ? answered({ reads: 'mirror', offset, tilt: tilt.value }) : tilt;
}

/** The spot is sent from beside the front of the lens, near enough the thin lens itself. */
export function spotReading({ spot }: Typed, { bench }: Reckoned): Answer<ReadingOf<'spot'>, BenchFault> {
  const offset = numberTyped(spot, 'no spot');
  if (!offset.ok) return offset;
  if (!bench?.ok) return cannot({ is: 'tilt without a rig' });
  const tilt = tiltFromSpot(bench.value.fromLens, millimetres(offset.value));
  return tilt.ok ? answered({ reads: 'spot', offset: millimetres(offset.value), tilt: tilt.value }) : tilt;
}

/** What the four sides must span to be told apart, as far as the picture has room for it. */
export function roomFor({ bench }: Reckoned): Room | undefined {
  if (!bench?.ok || !bench.value.target.ok) return undefined;
  const { fromLens, target } = bench.value;
  return { fromLens, seen: target.value.seen, error: MEASURING_ERROR };
}

/** The tilt by the four sides; the rectangle is the corner marks of the printed target unless another was typed. */
export function sidesTilt(typed: Typed, reckoned: Reckoned, corners: { width: number; height: number }): Answer<Tilt, BenchFault> {
  const { bench, print } = reckoned;
  if (!bench?.ok) return cannot({ is: 'tilt without a rig' });
  const sides = sidesTyped(typed);
  const factor = print?.factor ?? TRUE_SIZE;
  const size = (text: string, drawn: number) =>
    text.trim() === '' ? answered(printed(millimetres(drawn), factor)) : numberTyped(text, 'no rectangle');
  const width = size(typed.width, corners.width);
  if (!width.ok) return width;
  const height = size(typed.height, corners.height);
  if (!height.ok) return height;
  if (!(width.value > 0 && height.value > 0)) return cannot({ is: 'rectangle of nothing' });
  return tiltFromSides(sides, { width: millimetres(width.value), height: millimetres(height.value), fromLens: bench.value.fromLens }, MEASURING_ERROR);
}

const sidesTyped = ({ left, right, top, bottom }: Typed) => {
  const number = (text: string): number => readCount(text) ?? Number.NaN;
  return { left: number(left), right: number(right), top: number(top), bottom: number(bottom) };
};

/** The reading of this kind from what is typed. */
export function readingOf(
  kind: Exclude<ReadingKind, 'live view'>,
  typed: Typed,
  reckoned: Reckoned,
  corners: { width: number; height: number },
): Answer<BenchReading, BenchFault> {
  switch (kind) {
    case 'old value': {
      const value = numberTyped(typed.old, 'no stored correction');
      return value.ok ? checked({ reads: kind, value: value.value }, 'no such correction') : value;
    }
    case 'print': {
      const length = numberTyped(typed.printed, 'no printed length');
      if (!length.ok) return length;
      if (reckoned.faults.printed) return cannot(reckoned.faults.printed);
      return checked({ reads: kind, drawn: SCALE, measured: length.value });
    }
    case 'distance': {
      const distance = needed(typed.distance, 'no measured distance', (text) => readDistance(text, reckoned.unit));
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
      const pixels = needed(typed.scalePixels, 'no pixels spanned', (text) => {
        const count = readCount(text);
        return count === null ? cannot({ is: 'no pixels spanned' }) : answered(count);
      });
      if (!pixels.ok) return pixels;
      const length = printed(SCALE, reckoned.print?.factor ?? TRUE_SIZE);
      return reckoned.faults.scalePixels ? cannot(reckoned.faults.scalePixels) : checked({ reads: kind, length, pixels: pixels.value });
    }
    case 'temperature': {
      const celsius = numberTyped(typed.celsius, 'no temperature');
      return celsius.ok ? checked({ reads: kind, celsius: celsius.value }) : celsius;
    }
  }
}

/** What the ramp's sharpest line tells, in millimetres at the target; positive is behind it. */
export function rampErrorTyped({ rampReading, rampFace, rampSetBack }: Typed, { print }: Reckoned): Answer<number, BenchFault> {
  const line = numberTyped(rampReading, 'no ramp line');
  if (!line.ok) return line;
  const factor = print?.factor ?? TRUE_SIZE;
  if (rampSetBack.trim() === '') return rampError(line.value, RAMP_LEAN, factor);
  const back = numberTyped(rampSetBack, 'no set-back');
  if (!back.ok) return back;
  const face = numberTyped(rampFace, 'no ramp length');
  if (!face.ok) return face;
  const lean = rampLean(millimetres(back.value), millimetres(face.value));
  return lean.ok ? rampError(line.value, lean.value, factor) : lean;
}

export function placementReading({ share }: Typed): Answer<ReadingOf<'placement'>, BenchFault> {
  const percent = numberTyped(share, 'no share');
  if (!percent.ok) return percent;
  const part = fits(FrontShare, percent.value / 100);
  return part.ok ? answered({ reads: 'placement', share: part.value }) : part;
}

function checked(reading: unknown, otherwise?: PlainFault): Answer<BenchReading, BenchFault> {
  const fitting = fits(BenchReading, reading);
  return fitting.ok || otherwise === undefined ? fitting : cannot({ is: otherwise });
}
