// Lengths as people write them: focal lengths in millimetres, distances in metres or feet. The core keeps millimetres
// throughout. What can be read in two ways that are both possible is asked about, never guessed.
import { Distance, FocalLength } from '../kit/lengths.ts';
import { failed, got, type Result } from '../result.ts';
import { millimetres, type Millimetres } from '../units.ts';
import type { BenchFault } from './fault.ts';
import { fits } from './fits.ts';
import { lengthsIn, type DistanceUnit, type LengthRead } from './writtenLength.ts';

type Read = Result<Millimetres, BenchFault>;

/** A distance: "1.75", "1,75 m", "175 cm", "1,750 mm", "5.74 ft", "5 ft 9 in", `5' 9"`. Without a unit, the one in use. */
export function readDistance(text: string, unit: DistanceUnit): Read {
  const ways = lengthsIn(text, unit);
  if (ways.length === 0) return failed({ is: 'distance unread', unit });
  return onlyOne(text, ways, Distance) ?? failed({ is: 'distance out of range', unit });
}

/** A focal length in millimetres; another unit is recognised and the millimetres are offered. */
export function readFocalLength(text: string): Read {
  const ways = lengthsIn(text, 'mm');
  const [first] = ways;
  if (!first) return failed({ is: 'focal length unread' });
  const meant = ways.find((way) => fits(FocalLength, way.millimetres).ok);
  if (meant && meant.unit !== 'mm') {
    return failed({ is: 'focal length in another unit', typed: meant.parts, meant: millimetres(meant.millimetres) });
  }
  if (!meant && first.unit === 'mm' && first.value > 0 && first.value < 2) {
    return failed({ is: 'focal length in metres', typed: first.value, meant: millimetres(first.value * 1000) });
  }
  return onlyOne(text, ways, FocalLength) ?? failed({ is: 'no focal length' });
}

/** The one way to read the text that the range allows; a question where it allows two, and null where it allows none. */
function onlyOne(text: string, ways: readonly LengthRead[], range: typeof Distance | typeof FocalLength): Read | null {
  const possible = ways.flatMap((way) => {
    const checked = fits(range, way.millimetres);
    return checked.ok ? [{ parts: way.parts, length: checked.value }] : [];
  });
  const [one, other] = possible;
  if (one && other) return failed({ is: 'two lengths', text: text.trim(), one: one.parts, other: other.parts });
  return one ? got(one.length) : null;
}
