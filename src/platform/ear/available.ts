// The browser's recogniser, where it has one.
export const browserRecogniser = (): typeof SpeechRecognition | null => globalThis.SpeechRecognition ?? globalThis.webkitSpeechRecognition ?? null;

/** Whether the browser has recognition on this computer ready; nothing is ever downloaded for it. */
export async function knowsLocally(language: string): Promise<boolean> {
  try {
    return (await browserRecogniser()?.available({ langs: [language], processLocally: true })) === 'available';
  } catch {
    return false;
  }
}
