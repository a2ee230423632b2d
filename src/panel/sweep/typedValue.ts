// A correction that the person typed or stepped to, on the scale of the body.
import { isOnScale, neighbour, nearestOn, writeSteps, type Scale } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { typedNumber } from '../words/typedNumber.ts';

export type TypedValue = { readonly ok: true; readonly value: Steps } | { readonly ok: false; readonly sentence: string };

export function typedValue(scale: Scale, text: string): TypedValue {
  const value = typedNumber(text);
  if (isOnScale(scale, value)) return { ok: true, value };
  const strides = scale.step === 1 ? 'a whole number' : `a value in steps of ${scale.step}`;
  return { ok: false, sentence: `Enter ${strides} from ${writeSteps(scale.min)} to ${writeSteps(scale.max)}.` };
}

/** One step on from what was typed; from nonsense, zero or what is nearest to it. */
export function stepped(scale: Scale, text: string, direction: 1 | -1): string {
  const value = typedNumber(text);
  if (!Number.isFinite(value)) return writeSteps(nearestOn(scale, 0));
  const from = nearestOn(scale, value);
  return writeSteps(neighbour(scale, from, direction) ?? from);
}
