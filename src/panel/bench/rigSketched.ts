// The rig of the bench as it is sketched: its sizes, and the five answers that stand on the sketch, as far as they are known.
import { lightVerdict, USUAL_LIGHT } from '../../optics/light.ts';
import { layOutRamp, numberRamp, RAMP_LEAN, RAMP_WIDTH } from '../../optics/print/rampLayout.ts';
import { eyeIsEnough } from '../../optics/squareness.ts';
import type { Degrees } from '../../optics/quantity.ts';
import { lensSizes, type AtTarget, type RigSizes } from '../../optics/sketch/rigSizes.ts';
import type { Answer } from '../../optics/sketch/scene.ts';
import type { RigWords } from '../../words/rigWords.ts';
import { valueOf } from './entry.ts';
import type { Entered } from './fields.ts';
import { cornersOf } from './given.ts';
import type { PrintHere } from './printHere.ts';
import { lightReading, mirrorReading, sidesTilt, spotReading } from './readings.ts';
import type { Reckoned } from './reckon.ts';

export function rigSizesOf({ picks }: Entered, reckoned: Reckoned, { print }: PrintHere): RigSizes {
  const { distance, focalLength, reach, rig, bench } = reckoned;
  return {
    distance,
    lens: lensSizes(focalLength, rig?.aperture ?? null, picks.from === 'front of lens' && reach > 0 ? reach : null),
    lighting: picks.lighting,
    target: bench?.ok && print ? hung(bench.value, print) : null,
  };
}

type Known = Extract<NonNullable<Reckoned['bench']>, { ok: true }>['value'];

function hung({ depth, allowedTilt }: Known, { measure, drawing }: NonNullable<PrintHere['print']>): AtTarget {
  const { zero, height } = layOutRamp(numberRamp(depth.total));
  const { width, height: high } = drawing;
  return {
    width,
    height: high,
    field: measure.field,
    ramp: { above: zero, below: height - zero, width: RAMP_WIDTH, lean: RAMP_LEAN },
    depth,
    allowedTilt: eyeIsEnough(allowedTilt) ? null : allowedTilt,
  };
}

/** In the order they are read; what is not known yet is left out. */
export function answersOf(say: RigWords, entered: Entered, reckoned: Reckoned, { print }: PrintHere): readonly (readonly [Answer, string])[] {
  const { distance, focalLength, unit, bench } = reckoned;
  const stands = say.stands(distance, distance / focalLength, unit);
  if (!bench?.ok) return [['stands', stands]];
  const { depth, allowedTilt } = bench.value;
  const tilt = tiltRead(entered, reckoned);
  return [
    ['stands', stands],
    ['light', lightAnswer(say, entered)],
    ['square', tilt === null && eyeIsEnough(allowedTilt) ? say.squareByEye : say.square(allowedTilt, tilt)],
    ...(print ? [['prints', say.prints(print.measure.field, print.sheets)] as const] : []),
    ['depth', say.depth(depth.front, depth.behind, unit)],
  ];
}

function lightAnswer({ light }: RigWords, entered: Entered): string {
  const thresholds = { fine: valueOf(entered.fine) ?? USUAL_LIGHT.fine, plenty: valueOf(entered.plenty) ?? USUAL_LIGHT.plenty };
  const read = lightReading(entered);
  return read.ok ? light.found(read.value.ev, lightVerdict(read.value.ev, thresholds)) : light.wanted(thresholds.fine);
}

/** By the way that is picked; null where nothing is entered for it. */
function tiltRead(entered: Entered, reckoned: Reckoned): Degrees | null {
  switch (entered.picks.squareBy) {
    case 'mirror': {
      const read = mirrorReading(entered, reckoned);
      return read.ok ? read.value.tilt : null;
    }
    case 'spot': {
      const read = spotReading(entered, reckoned);
      return read.ok ? read.value.tilt : null;
    }
    case 'sides': {
      const tilt = sidesTilt(entered, reckoned, cornersOf(reckoned));
      return tilt.ok ? tilt.value.whole : null;
    }
  }
}
