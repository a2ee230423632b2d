// What one step is worth by the newest bracket of this pairing. At the sensor a step is as long at every distance, so a bracket at one distance
// counts at all; it is reckoned with what the kit knows of the rig.
import type { Body, Converter, Kit, Lens } from '../../kit/kit.ts';
import { widestAt } from '../../kit/lens.ts';
import type { ProofRecord } from '../../logbook/proofRecord.ts';
import { thinLensMagnification } from '../../optics/magnification.ts';
import { fNumber } from '../../optics/quantity.ts';
import { confusion } from '../../optics/sensor.ts';
import { worthOfStep, type StepWorth } from '../../optics/stepWorth.ts';
import { measuredStep } from '../../photographs/measuredStep.ts';
import { millimetres, type Millimetres } from '../../units.ts';

interface Pieces {
  readonly body: Body;
  readonly lens: Lens;
  readonly converter: Converter | null;
  readonly focalLength: Millimetres;
}

/** Null without such a bracket, or where the kit does not know the sensor or the widest aperture. */
export function measuredWorth({ situations }: Kit, proofs: readonly ProofRecord[], { body, lens, converter, focalLength }: Pieces): StepWorth | null {
  const ofPairing = new Set(
    situations
      .filter((one) => one.body === body.id && one.lens === lens.id && one.converter === (converter?.id ?? null) && one.focalLength === focalLength)
      .map(({ id }) => id),
  );
  const brackets = proofs.filter(({ practice, subject, proof }) => !practice && ofPairing.has(subject.situation) && measuredStep([proof]) !== null);
  const newest = brackets.toSorted((one, other) => one.at - other.at).at(-1);
  const step = newest && measuredStep([newest.proof]);
  const widest = widestAt(lens, focalLength);
  if (!newest || !step || body.sensor === null || widest === null) return null;
  const factor = converter?.factor ?? 1;
  const m = thinLensMagnification(millimetres(focalLength * factor), { from: 'film plane', distance: newest.subject.distance });
  if (!m.ok) return null;
  return worthOfStep(millimetres(step.value), { aperture: fNumber(widest * factor), confusion: confusion(body.sensor, { by: 'diagonal' }) }, m.value);
}
