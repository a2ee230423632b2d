// Speech for the browser's fake microphone: words spoken by espeak-ng, each after its own silence, in one WAV file.
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { program } from './browsers.ts';

export type Utterance = { after: number; say: string };

const rate = 22_050;
const headerBytes = 44;

/**
 * Writes the utterances to `path`. `after` is the silence before the word in seconds; `tail` the silence after the last.
 * Chromium starts the file when the page opens the microphone, not when the browser starts.
 */
export function writeSpeech(path: string, utterances: readonly Utterance[], tail = 5): void {
  const parts = utterances.flatMap(({ after, say }) => [silence(after), spoken(say)]);
  writeFileSync(path, wav(Buffer.concat([...parts, silence(tail)])));
}

/** Command line arguments that make `path` the only microphone, granted without a prompt and played once. */
export function microphonePlaying(path: string): string[] {
  return [
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-audio-capture=${path}%noloop`,
    '--use-fake-ui-for-media-stream',
  ];
}

function silence(seconds: number): Buffer {
  return Buffer.alloc(2 * Math.round(seconds * rate));
}

function spoken(words: string): Buffer {
  const file = execFileSync(program('espeak-ng'), ['-v', 'en', '-s', '140', '--stdout', words]);
  return file.subarray(headerBytes);
}

/** A 16-bit mono WAV file around raw samples. */
function wav(samples: Buffer): Buffer {
  const header = Buffer.alloc(headerBytes);
  header.write('RIFF', 0);
  header.writeUInt32LE(headerBytes - 8 + samples.length, 4);
  header.write('WAVEfmt ', 8);
  header.writeUInt32LE(16, 16);
  header.writeUInt16LE(1, 20);
  header.writeUInt16LE(1, 22);
  header.writeUInt32LE(rate, 24);
  header.writeUInt32LE(rate * 2, 28);
  header.writeUInt16LE(2, 32);
  header.writeUInt16LE(16, 34);
  header.write('data', 36);
  header.writeUInt32LE(samples.length, 40);
  return Buffer.concat([header, samples]);
}
