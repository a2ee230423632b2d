// How square the target must stand, and the two ways to check it: the mirror first.
import { judgeTilt } from '../../optics/fourSides.ts';
import { mirrorOffset, spotOffset } from '../../optics/mirror.ts';
import type { Degrees } from '../../optics/quantity.ts';
import { SQUARING } from '../../optics/setUp/caution.ts';
import type { SetUpCase } from '../../optics/setUp/step.ts';
import { depthAcross, edgeDefocus, eyeIsEnough } from '../../optics/squareness.ts';
import { stepAtSensor } from '../../optics/stepWorth.ts';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { Cautions } from './cautions.tsx';
import { BenchRoom } from './benchRoom.tsx';
import { Says } from './fact.tsx';
import { mirrorReading, roomFor, sidesTilt, spotReading } from './readings.ts';
import type { Reckoned } from './reckon.ts';
import { enteredAt, type Entered } from './fields.ts';
import { Choosing, Typing } from './typing.tsx';

interface Props {
  readonly reckoned: Reckoned;
  /** Of the target's corner marks, as drawn. */
  readonly corners: { readonly width: number; readonly height: number };
}

export function SquareCard({ reckoned, corners }: Props) {
  const { square: say, choices } = words('bench');
  const entered = enteredAt(useSurroundings().bench);
  const by = entered.picks.squareBy;
  return (
    <BenchRoom title={say.title}>
      <Allowed reckoned={reckoned} corners={corners} by={by} />
      <Choosing field="squareBy" from={choices.squareBy} />
      <SquareFields by={by} corners={corners} />
      <Says>{squareInWords(entered, reckoned, corners)}</Says>
      <Cautions all={SQUARING[by]} />
    </BenchRoom>
  );
}

/** The tilt that is allowed, and how it shows by the way that is picked, where that can be seen. */
function Allowed({ reckoned: { rig, bench }, by, corners }: Props & { readonly by: SetUpCase['squareBy'] }) {
  const { allowed, miss, byEye } = words('bench').square;
  if (!rig || !bench?.ok) return null;
  const { allowedTilt: tilt, target, focalLength, fromLens } = bench.value;
  if (eyeIsEnough(tilt)) return <p>{byEye}</p>;
  const [inMirror, ofSpot] = [mirrorOffset(focalLength, tilt), spotOffset(fromLens, tilt)];
  return (
    <>
      {target.ok && <p>{allowed(tilt, target.value.field, depthAcross(tilt, target.value.field))}</p>}
      {by === 'mirror' && inMirror < rig.sensor.height / 2 && <p class="small">{miss.mirror(Math.round(inMirror / rig.pitch))}</p>}
      {by === 'spot' && ofSpot < corners.width && <p class="small">{miss.spot(ofSpot)}</p>}
    </>
  );
}

export function SquareFields({ by, corners }: { readonly by: SetUpCase['squareBy']; readonly corners: Props['corners'] }) {
  const { empty } = words('bench');
  if (by !== 'sides') return <Typing field={by} />;
  return (
    <div class="halves">
      <Typing field="left" />
      <Typing field="right" />
      <Typing field="top" />
      <Typing field="bottom" />
      <Typing field="width" hint={empty(corners.width)} />
      <Typing field="height" hint={empty(corners.height)} />
    </div>
  );
}

/** The verdict on what is entered, or what to enter. */
export function squareInWords(entered: Entered, reckoned: Reckoned, corners: Props['corners']): string {
  const { square, fault } = words('bench');
  const by = entered.picks.squareBy;
  const allowed = reckoned.bench?.ok ? reckoned.bench.value.allowedTilt : null;
  if (by === 'sides') {
    const tilt = sidesTilt(entered, reckoned, corners);
    if (!tilt.ok) return fault(tilt.fault);
    return allowed === null ? '' : square.bySides(tilt.value, allowed, judgeTilt(tilt.value, allowed, roomFor(reckoned)));
  }
  const read = by === 'spot' ? spotReading(entered, reckoned) : mirrorReading(entered, reckoned);
  if (!read.ok) return fault(read.fault);
  const { tilt } = read.value;
  return allowed === null ? '' : square.tilted(by, tilt, stepsOf(tilt, reckoned), tilt <= allowed);
}

/** What the tilt costs at the edge of the AF area, in steps. */
function stepsOf(tilt: Degrees, { rig, bench }: Reckoned): number {
  if (!rig || !bench?.ok) return 0;
  const { magnification, blur } = bench.value;
  return edgeDefocus(rig.area, magnification, tilt) / stepAtSensor(blur, rig.worth);
}
