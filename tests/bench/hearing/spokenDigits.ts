// The spoken digits of a data folder: fsdd/DIGIT_SPEAKER_TAKE.wav, whoever the speakers are.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { readWave, type Sound } from './wave.ts';

export interface SpokenDigit {
  readonly digit: string;
  readonly speaker: string;
  readonly take: number;
  readonly sound: Sound;
}

/** Every speaker's digits, or null where the folder holds none. */
export function spokenDigits(data: string): Map<string, SpokenDigit[]> | null {
  const folder = join(data, 'fsdd');
  if (!existsSync(folder)) return null;
  const speakers = new Map<string, SpokenDigit[]>();
  for (const name of readdirSync(folder).sort()) {
    const parts = /^(\d)_([^_]+)_(\d+)\.wav$/.exec(name);
    if (parts === null) continue;
    const [, digit, speaker, take] = parts as unknown as [string, string, string, string];
    const all = speakers.get(speaker) ?? [];
    all.push({ digit, speaker, take: Number(take), sound: readWave(join(folder, name)) });
    speakers.set(speaker, all);
  }
  return speakers.size > 0 ? speakers : null;
}
