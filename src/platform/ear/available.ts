// The browser's recogniser, where it has one, and how far it is with recognising on this computer.
import type { Deaf } from '../../voice/deaf.ts';

export const browserRecogniser = (): typeof SpeechRecognition | null => globalThis.SpeechRecognition ?? globalThis.webkitSpeechRecognition ?? null;

/** How it stands with recognition on this computer: https://webaudio.github.io/web-speech-api/#enumdef-availabilitystatus */
export type OnThisComputer = 'unavailable' | 'downloadable' | 'downloading' | 'available';

const wanted = (language: string) => ({ langs: [language], processLocally: true });

/** Nothing is ever downloaded by asking. */
export async function onThisComputer(language: string): Promise<OnThisComputer> {
  try {
    return (await browserRecogniser()?.available(wanted(language))) ?? 'unavailable';
  } catch {
    return 'unavailable';
  }
}

/** Has the browser download what it takes; resolves when that is over: whether it came. */
export async function installOnThisComputer(language: string): Promise<boolean> {
  try {
    return (await browserRecogniser()?.install(wanted(language))) ?? false;
  } catch {
    return false;
  }
}

export const NOT_HERE: Readonly<Record<OnThisComputer, Deaf | null>> = {
  unavailable: 'not on this computer',
  downloadable: 'to be downloaded',
  downloading: 'being downloaded',
  available: null,
};
