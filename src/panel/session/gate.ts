// Listening only when asked to, for noisy rooms: the ear is open while the switch is held, and for a while after it was
// let go, so that a tap is enough.
import { signal, type ReadonlySignal } from '@preact/signals';

export interface Gate {
  readonly isOpen: ReadonlySignal<boolean>;
  /** Always true: the switch has done its work. */
  contact(move: 'down' | 'up'): true;
  /** Something was said that needs an answer. */
  keepOpen(): void;
  close(): void;
}

/** Time to begin to speak after a tap: common practice, no source. */
const STAYS_OPEN = 5000;

export function createGate(): Gate {
  const isOpen = signal(false);
  let held = false;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const close = (): void => {
    clearTimeout(timer);
    if (!held) isOpen.value = false;
  };
  const keepOpen = (): void => {
    clearTimeout(timer);
    if (!held && isOpen.peek()) timer = setTimeout(close, STAYS_OPEN);
  };
  return {
    isOpen,
    close,
    keepOpen,
    contact(move) {
      held = move === 'down';
      if (held) isOpen.value = true;
      keepOpen();
      return true;
    },
  };
}
