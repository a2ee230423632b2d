// ISO, aperture and shutter as the camera writes them. On most displays a bare whole number is a fraction of a second
// and seconds bear a mark: 125 is 1/125 s, 2" is two seconds, 1"3 is 1.3 s (common practice, no source).
import { seconds, type Seconds } from '../units.ts';
import { failed, got, type Result } from '../result.ts';
import type { BenchFault } from './fault.ts';
import { readWithin } from './meantNumber.ts';
import { FNumber, readCount, readNumber } from './quantity.ts';
import { halfWidth } from './writtenNumber.ts';

/** What was read from the camera, as shown. */
export interface Exposure {
  readonly iso: number;
  readonly aperture: FNumber;
  readonly shutter: Seconds;
}

/** "2.8", "f/2.8", "F2,8", "1:2.8". */
export const readAperture = (text: string): Result<FNumber, BenchFault> => readWithin(FNumber, text.trim().replace(/^(f\s*\/?|1\s*:)\s*/i, ''));

export function readIsoSpeed(text: string): Result<number, BenchFault> {
  const iso = readCount(halfWidth(text).replace(/^iso\s*/i, ''));
  if (iso !== null && iso >= 6 && iso <= 3_300_000) return got(iso);
  return failed({ is: 'no iso speed' });
}

const SECONDS = 's|sec|seconds?|sek\\.?|sekunden?|secondes?|seg\\.?|segundos?|秒';
const NO_SHUTTER = failed<BenchFault>({ is: 'no shutter' });

/** "1/125", "1/125 s", "125", "0.5", `2"`, `1"3`, "2 s". A bare 2 or 3 could mean either, so it is asked again. */
export function readShutter(text: string): Result<Seconds, BenchFault> {
  const plain = halfWidth(text)
    .toLowerCase()
    .replaceAll(/[\u2033\u201d]|''|\u2032\u2032/g, '"');
  const fraction = new RegExp(`^1\\s*/\\s*(\\S+?)\\s*(${SECONDS})?$`).exec(plain)?.[1];
  const marked = /^(\d+)"(\d*)$/.exec(plain);
  const said = new RegExp(`^(\\S+?)\\s*(${SECONDS})$`).exec(plain)?.[1];
  if (fraction !== undefined) return inRange(1 / (readCount(fraction) ?? Number.NaN));
  if (marked) return inRange(Number(`${marked[1]}.${marked[2]}0`));
  if (said !== undefined) return inRange(readNumber(said) ?? Number.NaN);
  const bare = readNumber(plain) ?? Number.NaN;
  if (bare === 2 || bare === 3) return NO_SHUTTER;
  return inRange(Number.isInteger(bare) && bare >= 4 ? 1 / bare : bare);
}

const inRange = (time: number): Result<Seconds, BenchFault> => (time >= 1 / 64_000 && time <= 3600 ? got(seconds(time)) : NO_SHUTTER);
