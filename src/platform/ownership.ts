// One panel runs the sweep, however many windows show it. A web lock says which; the browser frees it when that panel
// closes or crashes, and the next in the queue becomes the owner.
const LOCK = 'sweepbook sweep';

export interface Ownership {
  /** Owns the sweep if nobody else does; tells whether it does. */
  claim(): Promise<boolean>;
  /** Owns it as soon as the present owner lets go. */
  queue(): void;
  /** Owns it now: the present owner is told by `onLost`. */
  take(): void;
  /** Lets go, or leaves the queue. */
  release(): void;
  onGot(listener: () => void): void;
  onLost(listener: () => void): void;
}

export function createOwnership(): Ownership {
  let letGo: (() => void) | null = null;
  let waiting: AbortController | null = null;
  let got: () => void = () => undefined;
  let lost: () => void = () => undefined;

  const held = (): Promise<void> =>
    new Promise((done) => {
      letGo = () => {
        letGo = null;
        done();
      };
    });

  /** Asks for the lock and holds it until let go; a lock taken away ends in an AbortError. */
  function ask(options: LockOptions, granted: (lock: boolean) => void): void {
    navigator.locks
      .request(LOCK, options, (lock) => {
        granted(lock !== null);
        return lock ? held() : undefined;
      })
      .catch(() => {
        if (letGo === null) return;
        letGo = null;
        lost();
      });
  }

  function leaveQueue(): void {
    waiting?.abort();
    waiting = null;
  }

  return {
    claim: () => (letGo ? Promise.resolve(true) : new Promise((answer) => ask({ ifAvailable: true }, answer))),
    queue() {
      if (waiting || letGo) return;
      waiting = new AbortController();
      ask({ signal: waiting.signal }, () => {
        waiting = null;
        got();
      });
    },
    take() {
      leaveQueue();
      if (!letGo) ask({ steal: true }, () => got());
    },
    release() {
      leaveQueue();
      letGo?.();
    },
    onGot(listener) {
      got = listener;
    },
    onLost(listener) {
      lost = listener;
    },
  };
}
