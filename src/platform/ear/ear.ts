// The panel's ear: opened and closed as a whole, and deaf while the panel itself speaks or sounds. Over all windows only
// one ear is open at a time, or a word would be taken twice. What recognises words is read only when it is wanted.
import { UNREAD } from '../../unread.ts';
import type { Deafness } from './listening.ts';
import type { EarOwner } from './owner.ts';

/** What recognises the words: those the person taught, or the browser, on this computer only or wherever its maker does. */
export type RecognisedBy = 'own' | 'here' | 'browser';

export interface Ear {
  /** With another recogniser than before, the one before is closed first. */
  open(by: RecognisedBy): void;
  close(): void;
  /** Deaf until the returned function is called, and a moment longer: rooms and loudspeakers ring on. */
  deafen(): () => void;
}

const LOCK = 'sweepbook ear';
const TAIL = 250;

export function createEar(owner: EarOwner): Ear {
  let opened: { readonly by: RecognisedBy; readonly over: AbortController } | null = null;
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
    wordsNow: owner.wordsNow,
    onState: (state) => signal.aborted || owner.onState(state),
    onHeard: (candidates, final) => !signal.aborted && owner.onHeard(candidates, final),
    onTrouble: (trouble) => signal.aborted || owner.onTrouble(trouble),
  });

  async function listen(by: RecognisedBy, heard: EarOwner, signal: AbortSignal): Promise<void> {
    try {
      if (by === 'own') {
        const { keepListeningForOwnWords } = await import('./ownWords.ts');
        return await keepListeningForOwnWords(heard, deafness, signal);
      }
      const { keepListening } = await import('./listening.ts');
      await keepListening(heard, by === 'here', deafness, signal);
    } catch {
      heard.onState('unavailable');
      heard.onTrouble({ sentence: UNREAD, page: null });
    }
  }

  function close(): void {
    if (!opened) return;
    opened.over.abort();
    opened = null;
    owner.onState('off');
    owner.onTrouble(null);
  }

  return {
    deafen,
    close,
    open(by) {
      if (opened?.by === by) return;
      close();
      opened = { by, over: new AbortController() };
      const { signal } = opened.over;
      owner.onState('waiting');
      navigator.locks.request(LOCK, { signal }, () => listen(by, until(signal), signal)).catch(() => undefined);
    },
  };
}
