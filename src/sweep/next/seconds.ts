// What one more hold costs the person: dialling the value in, and the hold itself. The search spends this, not holds
// (common practice, no source: timed on people stepping through a menu).
import { seconds, type Seconds, type Steps } from '../../units.ts';

const TO_DIAL = 4;
const PER_STEP = 0.3;
/** A light that fails is judged well before the full hold time. */
const TO_FAIL = 2;

/** Expected seconds of one hold at `value`, coming from `current`, when it holds with chance `held`. */
export function secondsOfHold(current: Steps, value: Steps, step: number, held: number, holdTime: Seconds): Seconds {
  const dialling = TO_DIAL + (PER_STEP * Math.abs(value - current)) / step;
  return seconds(dialling + held * holdTime + (1 - held) * TO_FAIL);
}
