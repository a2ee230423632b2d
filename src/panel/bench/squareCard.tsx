// How square the target must stand, and the two ways to check it: the mirror first.
import { judgeTilt } from '../../optics/fourSides.ts';
import { mirrorOffset } from '../../optics/mirror.ts';
import { writeNumber } from '../../optics/quantity.ts';
import { MIRROR, MIRROR_EDGES } from '../../optics/setUp/caution.ts';
import { tiltSentence } from '../../optics/squareness.ts';
import { useSurroundings } from '../useSession.ts';
import { Cautions } from './cautions.tsx';
import { Says } from './fact.tsx';
import { mirrorReading, sidesTilt } from './readings.ts';
import type { Reckoned } from './reckon.ts';
import { typedAt, type Typed } from './fields.ts';
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
          {writeNumber(mirrorOffset(bench.value.focalLength, bench.value.allowedTilt) / rig.pitch, 0)} pixels off the middle.
        </p>
      )}
      <Choosing field="squareBy" label="Checked by" options={WAYS} />
      <SquareFields by={typed.squareBy} corners={corners} />
      <Says>{squareInWords(typed, reckoned, corners)}</Says>
      {typed.squareBy === 'mirror' && <Cautions all={[MIRROR, MIRROR_EDGES]} />}
    </section>
  );
}

export function SquareFields({ by, corners }: { readonly by: string; readonly corners: Props['corners'] }) {
  if (by === 'mirror') return <Typing field="mirror" label="The lens sees itself off the middle by, pixels" />;
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
  if (typed.squareBy !== 'mirror') {
    const tilt = sidesTilt(typed, reckoned, corners);
    if (!tilt.ok) return tilt.say;
    return allowed === null ? '' : judgeTilt(tilt.value, allowed).say;
  }
  const read = mirrorReading(typed, reckoned);
  if (!read.ok) return read.say;
  const tilted = `Tilted ${writeNumber(read.value.tilt, 2)}\u00b0`;
  return allowed !== null && read.value.tilt <= allowed
    ? `${tilted}: square enough.`
    : `${tilted}: turn the target until the lens sees itself nearer the middle of the picture.`;
}

const WAYS = [
  { value: 'mirror', label: 'a small mirror on the target' },
  { value: 'sides', label: 'its four sides in live view' },
];
