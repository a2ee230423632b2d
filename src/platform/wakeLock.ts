// Keeps the screen on while a sweep runs. It may be refused; a sweep runs without it all the same. The browser drops the
// lock whenever the panel is hidden, so it is asked for again when the panel is seen.
export interface WakeLock {
  /** To be called at a gesture of the person: elsewhere the browser may refuse. */
  keepAwake(): void;
  release(): void;
}

export function createWakeLock(): WakeLock {
  let wanted = false;
  let held: WakeLockSentinel | null = null;

  async function ask(): Promise<void> {
    if (!wanted || document.visibilityState !== 'visible' || (held && !held.released)) return;
    try {
      const lock = await navigator.wakeLock.request('screen');
      held = lock;
      if (!wanted) await lock.release();
    } catch {
      // Refused: no gesture, low battery, not supported. Asked again at the next gesture.
    }
  }

  document.addEventListener('visibilitychange', () => void ask());
  return {
    keepAwake() {
      wanted = true;
      void ask();
    },
    release() {
      wanted = false;
      void held?.release();
      held = null;
    },
  };
}
