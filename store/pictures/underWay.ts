// A sweep of the invented kit as it lies in the browser's storage while it is under way, after so many holds.
import type { Journal } from '../../src/sweep/event.ts';
import { openSweep } from '../../src/sweep/opening.ts';
import { USUAL_SCALE } from '../../src/sweep/scale.ts';
import type { SweepState } from '../../src/sweep/state.ts';
import type { Verdict } from '../../src/sweep/verdict.ts';
import { millimetres, moment } from '../../src/units.ts';
import { after, opened } from '../../tests/sweep/staged.ts';

/** The values that hold. */
const BAND = { low: 3, high: 9 };
/** From one hold to the next, and the hold itself, in ms. */
const TURN = 11_000;
const HOLD = 5000;

const SUBJECT = { situation: 'c85', body: 'Velde M1', lens: 'Corvid 85 f/1.8', focalLength: millimetres(85), distance: millimetres(4250) };

/** Until the finish is offered, or for so many holds. `now`: when the last of them was judged. */
export function sweepUnderWay(now: number, holds = Infinity): Journal {
  const began = now - Math.min(holds, 12) * TURN;
  const first = { ...opened({ subject: SUBJECT, scale: USUAL_SCALE, arrows: 'absent' }), at: moment(began) };
  let state: SweepState = openSweep(first).state;
  for (let hold = 0; hold < holds && state.phase.name === 'dialling'; hold++) state = held(state, began + hold * TURN);
  return [...state.journal];
}

function held(state: SweepState, at: number): SweepState {
  const value = 'next' in state.phase ? state.phase.next.value : state.dialled;
  const verdict = seenAt(value);
  const ran = verdict.light === 'steady' ? [{ did: 'ran', at: moment(at + HOLD) } as const] : [];
  const begun = after(state, { did: 'began', at: moment(at), value, by: 'key' });
  return after(begun, ...ran, { did: 'judged', at: moment(at + HOLD + 1000), verdict, by: 'key', heard: null });
}

function seenAt(value: number): Verdict {
  const outside = Math.max(BAND.low - value, value - BAND.high);
  return { light: outside <= 0 ? 'steady' : outside <= 1 ? 'late' : outside <= 6 ? 'flicker' : 'dark', arrows: 'none' };
}
