// Contract of own words in every language: the words that carry a sweep are taught by a synthesiser's voice of that language and said again from
// other places of a room, at 20 dB over its noise. None may be taken for another.
import { expect, test } from 'vitest';
import { HEARD } from '../../src/hearing/languages.ts';
import { inKana } from '../../src/hearing/languages/ja/reading.ts';
import type { Language } from '../../src/language.ts';
import { firstWordsIn } from '../../src/voice/wordGroups.ts';
import { chanceFrom } from '../bench/hearing/chance.ts';
import { rooms } from '../bench/hearing/room.ts';
import { recording } from '../bench/hearing/stream.ts';
import { tried } from '../bench/hearing/tried.ts';
import { rate, saidAlone } from './spoken.ts';
import { takesOf } from './voiceInRoom.ts';

/** `read`: the synthesiser reads no Chinese characters. */
const VOICES: readonly { language: Language; voice: string; seed: number; read?: (word: string) => string }[] = [
  { language: 'de', voice: 'de+f2', seed: 21 },
  { language: 'es', voice: 'es+m3', seed: 22 },
  { language: 'fr', voice: 'fr-fr+f2', seed: 23 },
  { language: 'ja', voice: 'ja+m3', seed: 24, read: inKana },
];
const TIMES = 3;
const DECIBELS = 20;

test.each(VOICES)('in $language no taught word is taken for another', { timeout: 120_000 }, async ({ language, voice, seed, read = (word) => word }) => {
  const words = firstWordsIn(await HEARD[language].written());
  const takes = words.flatMap((word) => takesOf(word, read(word), voice, seed));
  const chance = chanceFrom(seed);
  const places = rooms(4, seed, rate, [0.25, 0.5]);
  const said = Array.from({ length: TIMES }, (_, time) =>
    words.map((label) => {
      const samples = saidAlone({ say: read(label), voice, pace: 132 + chance.whole(22), pitch: 46 + chance.whole(8) });
      const room = places[(time + 1) % places.length];
      if (!room) throw new Error('There is no room.');
      return { samples, label, room, pause: 1.2 };
    }),
  ).flat();
  const { right, wrong, unsure } = tried(rate, takes, recording(said, rate, DECIBELS, chance), { spent: 0, heard: 0 });
  console.log(`own words in “${language}”: ${said.length} said, ${right} taken, ${unsure} asked about, ${wrong} wrong`);
  expect(wrong).toBe(0);
  expect(right).toBeGreaterThan(0.8 * said.length);
});
