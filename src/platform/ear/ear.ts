// The panel's ear: opened and closed as a whole, and deaf while the panel itself speaks or sounds. Over all windows only
// one ear is open at a time, or a word would be taken twice. What recognises words is read only when it is wanted.
import type { RecognisedBy } from '../../voice/deaf.ts';
import type { Deafness } from './listening.ts';
import type { EarOwner } from './owner.ts';

export interface Ear {
  /** With another recogniser than before, the one before is closed first. */
  open(by: RecognisedBy): void;
  close(): void;
  isOpen(): boolean;
  /** Tries again at once where it is open; `here`: also where another window listens, which is deaf from then on. */
  again(here: boolean): void;
  /** Deaf until the returned function is called, and a moment longer: rooms and loudspeakers ring on. */
  deafen(): () => void;
}

const LOCK = 'sweepbook ear';
const TAIL = 250;
/** Longer than it takes to get the ear back from oneself. */
const HANDED_OVER = 600;

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
    namesNow: owner.namesNow,
    onState: (state) => signal.aborted || owner.onState(state),
    passes: owner.passes,
    onHeard: (candidates, final, ago) => !signal.aborted && owner.onHeard(candidates, final, ago),
    onMissed: (word, why) => signal.aborted || owner.onMissed(word, why),
    onDeaf: (why) => signal.aborted || owner.onDeaf(why),
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
      heard.onDeaf('unread');
    }
  }

  function close(): void {
    if (!opened) return;
    opened.over.abort();
    opened = null;
    owner.onState('off');
    owner.onDeaf(null);
  }

  /** Hears until it is closed, or until another window takes the ear. */
  async function hear(by: RecognisedBy, closed: AbortSignal, steal: boolean): Promise<'closed' | 'taken'> {
    const taken = new AbortController();
    const signal = AbortSignal.any([closed, taken.signal]);
    const heard = until(signal);
    const elsewhere = setTimeout(() => heard.onDeaf('another window'), HANDED_OVER);
    try {
      await navigator.locks.request(LOCK, steal ? { steal } : { signal: closed }, () => {
        clearTimeout(elsewhere);
        heard.onDeaf(null);
        return listen(by, heard, signal);
      });
      return 'closed';
    } catch {
      clearTimeout(elsewhere);
      taken.abort();
      return closed.aborted ? 'closed' : 'taken';
    }
  }

  async function keepHearing(by: RecognisedBy, closed: AbortSignal, stealing: boolean): Promise<void> {
    for (let steal = stealing; (await hear(by, closed, steal)) === 'taken'; steal = false) owner.onState('waiting');
  }

  function begin(by: RecognisedBy, steal: boolean): void {
    const over = new AbortController();
    opened = { by, over };
    owner.onState('waiting');
    void keepHearing(by, over.signal, steal);
  }

  return {
    deafen,
    close,
    isOpen: () => opened !== null,
    open(by) {
      if (opened?.by === by) return;
      close();
      begin(by, false);
    },
    again(here) {
      if (!opened) return;
      const { by } = opened;
      close();
      begin(by, here);
    },
  };
}
