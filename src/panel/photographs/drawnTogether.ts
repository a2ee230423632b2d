// What changes hundreds of times a second is drawn a few times a second, so that keys are answered in between: the first change at once, those
// that come soon after it together.
import { signal, type ReadonlySignal } from '@preact/signals';

/** Milliseconds from one drawing to the next: a person sees no difference, and a list of cards takes a small part of it to be drawn. */
const APART = 100;

export interface DrawnTogether<Value> {
  /** As it is drawn. */
  readonly drawn: ReadonlySignal<Value>;
  /** As it stands, drawn or not yet. */
  readonly standing: () => Value;
  readonly put: (value: Value, drawn: 'at once' | 'soon') => void;
}

export function drawnTogether<Value>(first: Value): DrawnTogether<Value> {
  const drawn = signal(first);
  let standing = first;
  let apart: ReturnType<typeof setTimeout> | undefined;

  function draw(): void {
    clearTimeout(apart);
    drawn.value = standing;
    apart = setTimeout(() => {
      apart = undefined;
      if (drawn.peek() !== standing) draw();
    }, APART);
  }

  return {
    drawn,
    standing: () => standing,
    put(value, when) {
      standing = value;
      if (when === 'at once' || apart === undefined) draw();
    },
  };
}
