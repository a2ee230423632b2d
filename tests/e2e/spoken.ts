// Speech for the browser's fake microphone: words spoken by espeak-ng, each after its own silence, in one WAV file.
import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { program } from '../programs/programs.ts';

/** Pace in words a minute and pitch of the voice, where it is not the usual. */
export type Utterance = { after: number; say: string; pace?: number; pitch?: number; voice?: string };

export const rate = 22_050;
const headerBytes = 44;

/**
 * Writes the utterances to `path`. `after` is the silence before the word in seconds; `tail` the silence after the last.
 * Chromium starts the file when the page opens the microphone, not when the browser starts.
 */
export function writeSpeech(path: string, utterances: readonly Utterance[], tail = 5): void {
  writeFileSync(path, wav(samplesOf(utterances, tail)));
}

/** The same in a room: a fan's steady noise under everything. */
export function writeSpeechInRoom(path: string, utterances: readonly Utterance[], loudness: number): void {
  writeFileSync(path, wav(inRoom(samplesOf(utterances, 5), loudness)));
}

/** The word alone, as samples from -1 to 1. */
export function saidAlone(utterance: Omit<Utterance, 'after'>): Float32Array {
  const bytes = spoken({ ...utterance, after: 0 });
  return Float32Array.from({ length: bytes.length / 2 }, (_, index) => bytes.readInt16LE(2 * index) / 32_768);
}

/** Writes samples from -1 to 1. */
export function writeWave(path: string, samples: Float32Array): void {
  const bytes = Buffer.alloc(2 * samples.length);
  for (const [index, value] of samples.entries()) bytes.writeInt16LE(Math.max(-32_768, Math.min(32_767, Math.round(value * 32_768))), 2 * index);
  writeFileSync(path, wav(bytes));
}

function samplesOf(utterances: readonly Utterance[], tail: number): Buffer {
  return Buffer.concat([...utterances.flatMap((one) => [silence(one.after), spoken(one)]), silence(tail)]);
}

/** Noise that is the same at every run. */
function inRoom(samples: Buffer, loudness: number): Buffer {
  let state = 1;
  for (let at = 0; at + 1 < samples.length; at += 2) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    const noise = (state / 2 ** 32 - 0.5) * 2 * loudness * 32_768;
    samples.writeInt16LE(Math.max(-32_768, Math.min(32_767, Math.round(samples.readInt16LE(at) + noise))), at);
  }
  return samples;
}

/** Command line arguments that make `path` the only microphone, granted without a prompt and played once. */
export function microphonePlaying(path: string): string[] {
  return ['--use-fake-device-for-media-stream', `--use-file-for-fake-audio-capture=${path}%noloop`, '--use-fake-ui-for-media-stream'];
}

function silence(seconds: number): Buffer {
  return Buffer.alloc(2 * Math.round(seconds * rate));
}

const said = new Map<string, Buffer>();

/** The same words in the same voice sound alike every time: each is spoken once. */
function spoken({ say, pace = 140, pitch = 50, voice = 'en' }: Utterance): Buffer {
  const how = ['-v', voice, '-s', String(pace), '-p', String(pitch), '--stdout', say];
  const key = JSON.stringify(how);
  const samples = said.get(key) ?? execFileSync(program('espeak-ng'), how).subarray(headerBytes);
  said.set(key, samples);
  return samples;
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
