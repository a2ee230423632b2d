// The panel's ear: opened and closed as a whole, and deaf while the panel itself speaks or sounds. Over all windows only
// one ear is open at a time, or a word would be taken twice.
import { UNREAD } from '../../unread.ts';
import type { Deafness, EarOwner } from './listening.ts';

export interface Ear {
  open(): void;
  close(): void;
  /** Deaf until the returned function is called, and a moment longer: rooms and loudspeakers ring on. */
  deafen(): () => void;
}

const LOCK = 'sweepbook ear';
const TAIL = 250;

export function createEar(owner: EarOwner): Ear {
  let opened: AbortController | null = null;
  let sounding = 0;
  let beginning = new AbortController();
  let ended = Promise.resolve();
  let end: () => void = () => undefined;

  const deafness: Deafness = {
    isDeaf: () => sounding > 0,
    over: () => ended,
    begins: () => (sounding > 0 ? AbortSignal.abort() : beginning.signal),
  };

  function deafen(): () => void {
    if (sounding === 0) {
      ended = new Promise((done) => {
        end = done;
      });
      beginning.abort();
      beginning = new AbortController();
    }
    sounding += 1;
    let over = false;
    return () => {
      if (over) return;
      over = true;
      setTimeout(() => {
        sounding -= 1;
        if (sounding === 0) end();
      }, TAIL);
    };
  }

  /** What comes after the ear was closed is not passed on. */
  const until = (signal: AbortSignal): EarOwner => ({
    language: owner.language,
    onState: (state) => signal.aborted || owner.onState(state),
    onHeard: (candidates, final) => !signal.aborted && owner.onHeard(candidates, final),
    onTrouble: (trouble) => signal.aborted || owner.onTrouble(trouble),
  });

  /** What recognises words is read only when it is wanted. */
  async function listen(heard: EarOwner, signal: AbortSignal): Promise<void> {
    try {
      const { keepListening } = await import('./listening.ts');
      await keepListening(heard, deafness, signal);
    } catch {
      heard.onState('unavailable');
      heard.onTrouble({ sentence: UNREAD, needsPage: false });
    }
  }

  return {
    deafen,
    open() {
      if (opened) return;
      const { signal } = (opened = new AbortController());
      owner.onState('waiting');
      navigator.locks.request(LOCK, { signal }, () => listen(until(signal), signal)).catch(() => undefined);
    },
    close() {
      if (!opened) return;
      opened.abort();
      opened = null;
      owner.onState('off');
      owner.onTrouble(null);
    },
  };
}
