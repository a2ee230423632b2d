// A set-up walk under way: where it is, for the screen to draw.
import { signal, type ReadonlySignal } from '@preact/signals';
import type { BenchRecord } from '../../optics/setUp/reading.ts';
import type { SetUpCase } from '../../optics/setUp/step.ts';
import { beginWalk, walk, type ToSpeak, type WalkEvent, type WalkState } from '../../optics/setUp/walk.ts';

export interface Walking {
  readonly state: ReadonlySignal<WalkState>;
  /** Moves it, and gives what to say. */
  move(event: WalkEvent): ToSpeak;
}

export function newWalking(given: SetUpCase, bench: BenchRecord): Walking {
  const state = signal(beginWalk(given, bench));
  return {
    state,
    move(event) {
      const moved = walk(state.peek(), event);
      state.value = moved.state;
      return moved.say;
    },
  };
}
