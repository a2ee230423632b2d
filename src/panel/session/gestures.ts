// The one switch, with the clock behind it: contacts come in, presses go out as soon as they can be known.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { Input } from '../../sweep/inputs.ts';
import { lookAgainAt, moveSwitch, RELEASED, type Contact, type OneSwitch } from '../../sweep/oneSwitch.ts';
import type { Phase } from '../../sweep/state.ts';
import { moment, seconds, type Moment, type Seconds } from '../../units.ts';

export interface Gestures {
  readonly pressed: ReadonlySignal<Moment | null>;
  /** `waited`: how long ago it was. */
  contact(move: 'down' | 'up', waited?: Seconds): void;
}

export function createGestures(now: () => Moment, phase: () => Phase['name'] | null, tell: (input: Input) => void): Gestures {
  const pressed = signal<Moment | null>(null);
  let state: OneSwitch = RELEASED;
  let timer: ReturnType<typeof setTimeout> | undefined;

  function move(contact: Contact): void {
    const moved = moveSwitch(state, contact);
    state = moved.state;
    pressed.value = state.is === 'down' ? state.since : null;
    clearTimeout(timer);
    const due = lookAgainAt(state);
    if (due !== null) timer = setTimeout(() => move({ move: 'none', at: moment(Math.max(due, now())) }), Math.max(0, due - now()));
    for (const press of moved.presses) tell(press);
  }

  return {
    pressed,
    contact(direction, waited = seconds(0)) {
      const during = phase();
      const at = moment(now() - waited * 1000);
      if (direction === 'up') move({ move: 'up', at });
      else if (during !== null) move({ move: 'down', at, during });
    },
  };
}
