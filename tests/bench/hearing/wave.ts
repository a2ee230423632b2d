// Reads a plain wav file: 16-bit PCM, the first channel.
import { readFileSync } from 'node:fs';

export interface Sound {
  readonly samples: Float32Array;
  /** Samples a second. */
  readonly rate: number;
}

export function readWave(file: string): Sound {
  const bytes = readFileSync(file);
  let channels = 1;
  let rate = 0;
  for (let at = 12; at + 8 <= bytes.length;) {
    const chunk = bytes.toString('latin1', at, at + 4);
    const length = bytes.readUInt32LE(at + 4);
    if (chunk === 'fmt ') {
      channels = bytes.readUInt16LE(at + 10);
      rate = bytes.readUInt32LE(at + 12);
      const bits = bytes.readUInt16LE(at + 22);
      if (bits !== 16) throw new Error(`${file} has ${bits} bits a sample; only 16 are read.`);
    }
    if (chunk === 'data') {
      const end = Math.min(bytes.length, at + 8 + length);
      const count = Math.floor((end - at - 8) / 2 / channels);
      const samples = Float32Array.from({ length: count }, (_, i) => bytes.readInt16LE(at + 8 + i * 2 * channels) / 32768);
      return { samples, rate };
    }
    at += 8 + length + (length & 1);
  }
  throw new Error(`${file} holds no sound.`);
}
