// How square the target must stand, and the two ways to check it: the mirror first.
import { judgeTilt } from '../../optics/fourSides.ts';
import { mirrorOffset, spotOffset } from '../../optics/mirror.ts';
import { writeNumber, type Degrees } from '../../optics/quantity.ts';
import { LASER, LASER_SENSOR, MIRROR, MIRROR_EDGES } from '../../optics/setUp/caution.ts';
import { edgeDefocus, tiltSentence } from '../../optics/squareness.ts';
import { stepAtSensor } from '../../optics/stepWorth.ts';
import { useSurroundings } from '../useSession.ts';
import { Cautions } from './cautions.tsx';
import { Says } from './fact.tsx';
import { mirrorReading, roomFor, sidesTilt, spotReading } from './readings.ts';
import type { Reckoned } from './reckon.ts';
import { typedAt } from './fields.ts';
import type { Typed } from './untyped.ts';
import { Choosing, Typing } from './typing.tsx';

interface Props {
  readonly reckoned: Reckoned;
  /** Of the target's corner marks, as drawn. */
  readonly corners: { readonly width: number; readonly height: number };
}

export function SquareCard({ reckoned, corners }: Props) {
  const typed = typedAt(useSurroundings().bench);
  const { rig, bench } = reckoned;
  return (
    <section class="card" aria-labelledby="bench-square">
      <h2 id="bench-square">Squareness</h2>
      {rig && bench?.ok && bench.value.target.ok && <p>{tiltSentence(bench.value.allowedTilt, bench.value.target.value.field)}</p>}
      {rig && bench?.ok && (
        <p class="small">
          In the mirror the lens may see itself{' '}
          {writeNumber(mirrorOffset(bench.value.focalLength, bench.value.allowedTilt) / rig.pitch, 0)} pixels off the middle; a
          returning spot may miss its source by {writeNumber(spotOffset(bench.value.fromLens, bench.value.allowedTilt), 0)} mm.
        </p>
      )}
      <Choosing field="squareBy" label="Checked by" options={WAYS} />
      <SquareFields by={typed.squareBy} corners={corners} />
      <Says>{squareInWords(typed, reckoned, corners)}</Says>
      {typed.squareBy !== 'sides' && <Cautions all={typed.squareBy === 'spot' ? [LASER, LASER_SENSOR, MIRROR, MIRROR_EDGES] : [MIRROR, MIRROR_EDGES]} />}
    </section>
  );
}

export function SquareFields({ by, corners }: { readonly by: string; readonly corners: Props['corners'] }) {
  if (by === 'mirror') return <Typing field="mirror" label="The lens sees itself off the middle by, pixels" />;
  if (by === 'spot') return <Typing field="spot" label="The spot comes back off its source by, mm" hint="Sent from beside the lens to a mirror flat on the target." />;
  return (
    <>
      <div class="halves">
        <Typing field="left" label="Left side" />
        <Typing field="right" label="Right side" />
        <Typing field="top" label="Top side" />
        <Typing field="bottom" label="Bottom side" />
        <Typing field="width" label="True width, mm" hint={`Empty: ${writeNumber(corners.width, 0)}.`} />
        <Typing field="height" label="True height, mm" hint={`Empty: ${writeNumber(corners.height, 0)}.`} />
      </div>
    </>
  );
}

/** The verdict on what is typed, or what to enter. */
export function squareInWords(typed: Typed, reckoned: Reckoned, corners: Props['corners']): string {
  const allowed = reckoned.bench?.ok ? reckoned.bench.value.allowedTilt : null;
  if (typed.squareBy === 'sides') {
    const tilt = sidesTilt(typed, reckoned, corners);
    if (!tilt.ok) return tilt.sentence;
    return allowed === null ? '' : judgeTilt(tilt.value, allowed, reckoned.bench?.ok ? roomFor(reckoned) : undefined).say;
  }
  const read = typed.squareBy === 'spot' ? spotReading(typed, reckoned) : mirrorReading(typed, reckoned);
  if (!read.ok) return read.sentence;
  const tilted = `Tilted ${writeNumber(read.value.tilt, 2)}\u00b0, ${tiltCost(read.value.tilt, reckoned)}`;
  return allowed !== null && read.value.tilt <= allowed
    ? `${tilted}: square enough.`
    : `${tilted}: turn the target until ${typed.squareBy === 'spot' ? 'the spot comes back nearer its source' : 'the lens sees itself nearer the middle of the picture'}.`;
}

/** What the tilt costs, in steps. */
function tiltCost(tilt: Degrees, { rig, bench }: Reckoned): string {
  if (!rig || !bench?.ok) return 'of unknown cost';
  const { magnification, blur } = bench.value;
  const steps = edgeDefocus(rig.area, magnification, tilt) / stepAtSensor(blur, rig.worth);
  return steps < 0.1 ? 'far less than a step' : `about ${writeNumber(steps, 1)} steps at the edge of the AF area`;
}

const WAYS = [
  { value: 'mirror', label: 'a small mirror on the target' },
  { value: 'sides', label: 'its four sides in live view' },
  { value: 'spot', label: 'a spot of light sent back' },
];
