// Before listening: whether the microphone is allowed, asking for it, and what else stands in the way, all without hearing
// anything.
import { browser } from '../browser.ts';
import { takesIn } from '../takes.ts';
import { browserRecogniser, installOnThisComputer, NOT_HERE, onThisComputer } from './available.ts';
import type { Deaf, RecognisedBy } from '../../voice/deaf.ts';
import { microphoneChanged, microphonePermission, openMicrophone, type NoMicrophone } from './microphone.ts';

export interface Microphone {
  /** `unknown`: the browser does not tell. */
  allowed(): Promise<PermissionState | 'unknown'>;
  /**
   * Has the browser ask; null when it may be used. `at once`: refused before anybody could have read a question, as in a
   * panel that can show none.
   */
  ask(): Promise<{ readonly why: NoMicrophone; readonly atOnce: boolean } | null>;
  /** Resolves when the permission, or the microphones there are, have changed. */
  changed(stop: AbortSignal): Promise<void>;
  /** What stands in the way of listening so; null when nothing is known to. */
  inTheWay(by: RecognisedBy): Promise<Deaf | null>;
  /** How this browser hears best: on this computer where it can, else as its maker does, else by taught words. */
  proposed(): Promise<RecognisedBy>;
  /** Could the browser hear on this computer if it downloaded what that takes? */
  downloadable(): Promise<boolean>;
  /** Has it do so; resolves when that is over: whether it came. */
  download(): Promise<boolean>;
}

/** Nobody reads a question and answers it within this. */
const AT_ONCE = 250;

/** `language`: the tag of what is to be recognised. */
export const microphoneFor = (language: () => string): Microphone => ({
  changed: microphoneChanged,
  allowed: async () => (await microphonePermission())?.state ?? 'unknown',
  async ask() {
    const began = performance.now();
    const opened = await openMicrophone();
    // Only the permission was wanted here.
    if (opened.ok) opened.value.stop();
    return opened.ok ? null : { why: opened.fault, atOnce: performance.now() - began < AT_ONCE };
  },
  async inTheWay(by) {
    if (by !== 'own' && !browserRecogniser()) return 'no recogniser';
    const notHere = by === 'here' ? NOT_HERE[await onThisComputer(language())] : null;
    if (notHere) return notHere;
    if (by === 'own') {
      const taught = await takesIn(language).read();
      if (!taught.ok) return 'words unreadable';
      if (taught.value.length === 0) return 'no words';
    }
    if (!(await anyMicrophone())) return 'no microphone';
    const state = (await microphonePermission())?.state;
    if (state === 'denied') return 'blocked';
    // Elsewhere the panel itself can ask, when it comes to that.
    return state === 'prompt' && 'sidePanel' in browser ? 'not asked' : null;
  },
  async proposed() {
    if (!browserRecogniser()) return 'own';
    return (await onThisComputer(language())) === 'available' ? 'here' : 'browser';
  },
  downloadable: async () => (await onThisComputer(language())) === 'downloadable',
  download: () => installOnThisComputer(language()),
});

async function anyMicrophone(): Promise<boolean> {
  try {
    return (await navigator.mediaDevices.enumerateDevices()).some(({ kind }) => kind === 'audioinput');
  } catch {
    return true;
  }
}
