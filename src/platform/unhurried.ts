// Long work between frames: it stops as soon as it has taken its share of one, so that a press is answered and the screen drawn.
import type { HowFar, Stepwise } from '../stepwise.ts';

/** Milliseconds of work without a stop: with the browser's own work it fits into one frame. */
const AT_ONE_GO = 8;

export async function unhurried<Value>(work: Stepwise<Value>, tell: (far: HowFar) => void = () => undefined): Promise<Value> {
  let since = performance.now();
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    if (performance.now() - since < AT_ONE_GO) continue;
    tell(step.value);
    await aBreak();
    since = performance.now();
  }
}

/** A message, because a timer waits a second in a window that is not seen. */
function aBreak(): Promise<void> {
  return new Promise((over) => {
    const { port1, port2 } = new MessageChannel();
    port1.addEventListener('message', () => {
      port1.close();
      over();
    });
    port1.start();
    port2.postMessage(null);
  });
}
