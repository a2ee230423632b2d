// A correction that the person typed or stepped to, on the scale of the body.
import { failed, got, type Result } from '../../result.ts';
import { isOnScale, neighbour, nearestOn, writeSteps, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { typedNumber } from '../words/typedNumber.ts';

/** Or the scale that it is not on. */
export function typedValue(scale: Scale, text: string): Result<Steps, Scale> {
  const value = typedNumber(text);
  return isOnScale(scale, value) ? got(value) : failed(scale);
}

/** One step on from what was typed; from nonsense, zero or what is nearest to it. */
export function stepped(scale: Scale, text: string, direction: 1 | -1): string {
  const value = typedNumber(text);
  if (!Number.isFinite(value)) return writeSteps(nearestOn(scale, 0));
  const from = nearestOn(scale, value);
  return writeSteps(neighbour(scale, from, direction) ?? from);
}
