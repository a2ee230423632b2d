// Somebody murmurs into the microphone for longer than a test takes; what it means is up to the speech service, which is
// told word by word.
import { join } from 'node:path';
import type { Listening } from './speech-service.ts';
import { microphonePlaying, writeSpeech } from './spoken.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

/** Command line arguments of the browser whose microphone it is; `whenOver` is told what to do then. */
export function murmuring(whenOver: (clear: () => void) => void): string[] {
  const folder = temporaryFolder();
  whenOver(() => removeFolder(folder));
  const wav = join(folder, 'murmur.wav');
  writeSpeech(wav, Array.from({ length: 120 }, () => ({ after: 0.6, say: 'solid' })));
  return microphonePlaying(wav);
}

/** Answers an utterance with the word to say now, as soon as there is one. */
export async function answer({ heard, send, isOver, close }: Listening, wordNow: () => Promise<string | null>): Promise<void> {
  await heard;
  while (!isOver()) {
    const word = await wordNow();
    if (word !== null) {
      send({ results: [{ final: true, alternatives: [{ transcript: word, confidence: 0.9 }] }] });
      break;
    }
    await new Promise((go) => setTimeout(go, 50));
  }
  await close();
}
