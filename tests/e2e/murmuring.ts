// Somebody murmurs into the microphone for longer than a test takes; what it means is up to the speech service, which is
// told word by word.
import { join } from 'node:path';
import { look, type Seat } from './seat.ts';
import type { Listening } from './speech-service.ts';
import { microphonePlaying, writeSpeech } from './spoken.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

/** Command line arguments of the browser whose microphone it is; `whenOver` is told what to do then. */
export function murmuring(whenOver: (clear: () => void) => void): string[] {
  const folder = temporaryFolder();
  whenOver(() => removeFolder(folder));
  const wav = join(folder, 'murmur.wav');
  writeSpeech(
    wav,
    Array.from({ length: 120 }, () => ({ after: 0.6, say: 'solid' })),
  );
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

/** How long a person waits before they say a word again, in ms, and how often they do. */
const PATIENCE = 1500;
const TIMES_SAID = 12;

/** Says a word until it led to one of these phases, and again while nothing comes of it: the panel does not listen while it sounds. */
export async function sayUntil(seat: Seat, mouth: { word: string | null }, word: string, ...phases: readonly string[]): Promise<void> {
  for (let said = 0; said < TIMES_SAID; said++) {
    mouth.word = word;
    const patience = performance.now() + PATIENCE;
    while (performance.now() < patience) {
      if (phases.includes((await look(seat)).phase ?? '')) return;
      await new Promise((go) => setTimeout(go, 50));
    }
  }
  throw new Error(`“${word}” was said ${TIMES_SAID} times and did not lead to ${phases.join(' or ')}.`);
}
