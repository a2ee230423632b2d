// What the open ear tells of drawn rows of sounds, kept: bursts, tones and syllables, alone and run together, in the room and beside
// the panel, as sure as the seed draws.
import { describe, expect, test } from 'vitest';
import { normal, seededRandom, type Random } from '../../../src/practice/random.ts';
import { OwnWordsEar, type EarEvent } from '../../../src/voice/ownWords/ear.ts';
import type { Recogniser, Recognition } from '../../../src/voice/ownWords/recogniser.ts';
import { kept } from '../../kept/kept.ts';

const RATE = 1000;
type Kind = 'quiet' | 'burst' | 'tone' | 'talk' | 'click';

/** So many seconds of a kind of sound, over the noise of the room. */
function sound(kind: Kind, time: number, random: Random): number[] {
  const pitch = 80 + 300 * random();
  const loud = 0.05 + 0.3 * random();
  const shape = (t: number): number => {
    if (kind === 'quiet') return 0;
    if (kind === 'tone') return loud * Math.sin((2 * Math.PI * pitch * t) / RATE);
    const white = loud * (random() - 0.5);
    return kind === 'talk' ? white * (0.55 + 0.45 * Math.sin((2 * Math.PI * 4 * t) / RATE)) ** 2 : white;
  };
  return Array.from({ length: Math.round(time * RATE) }, (_, t) => shape(t) + normal(random, 0, 0.0003));
}

/** As sure of what it hears as chance draws, about the limits of the ear; now and then nothing is taught. */
function recogniser(random: Random): Recogniser {
  const sure = [-3, 0.5, 0.99, 1, 1.5, 2.19, 2.2, 2.6, 3.19, 3.2, 4, 6];
  return {
    words: ['undo', 'pause', 'left'],
    recognise({ frames }) {
      const sureness = sure[Math.floor(random() * sure.length)] ?? 0;
      const word = ['undo', 'pause', 'left'][frames.length % 3] ?? 'undo';
      return random() < 0.04
        ? null
        : ({ words: random() < 0.04 ? [] : [{ word }], sureness, evidence: {}, clearance: frames.length } as unknown as Recognition);
    },
  };
}

const SECONDS: Record<Kind, readonly [least: number, more: number]> = { quiet: [0.15, 0.7], burst: [0.1, 0.4], tone: [0.1, 0.5], talk: [0.3, 0.8], click: [0.02, 0.1] }; // prettier-ignore
const KINDS = ['quiet', 'quiet', 'quiet', 'burst', 'burst', 'tone', 'talk', 'click'] as const;

const rounded = (value: number): number => Math.round(value * 1000) / 1000;
function short(event: EarEvent): string {
  if (event.heard === 'beginning') return `${rounded(event.at)} begins`;
  if (event.heard === 'nothing') return `${rounded(event.at)} ${event.because}, ${event.missed}, ${event.recognition?.sureness}`;
  const { began, ended, stretch, recognition } = event;
  return `${rounded(event.at)} ${event.heard} ${event.word} ${event.sureness} ${rounded(began)} to ${rounded(ended)}, ${stretch.frames.length}, ${recognition.clearance}`;
}

/** A row of sounds, of which a share comes while the panel sounds. */
function told(seed: number, parts: number, panel: number): string {
  const random = seededRandom(seed);
  const ear = new OwnWordsEar(RATE, recogniser(seededRandom(seed + 1000)), seed % 3 === 0 ? undefined : () => ['undo', 'left']);
  const events = ear.push(Float32Array.from(sound('quiet', 0.5, random)));
  for (let part = 0; part < parts; part++) {
    const kind = KINDS[Math.floor(random() * KINDS.length)] ?? 'quiet';
    const [least, more] = SECONDS[kind];
    const samples = Float32Array.from(sound(kind, least + more * random(), random));
    events.push(...(random() < panel ? ear.beside(samples) : ear.push(samples)));
  }
  events.push(...ear.push(Float32Array.from(sound('quiet', 1.2, random))));
  return events.map(short).join('; ');
}

describe('what the ear told', () => {
  test('of sounds in the room', () => {
    expect(kept(() => Array.from({ length: 14 }, (_, seed) => told(seed, 14, 0)))).toMatchSnapshot();
  });

  test('while the panel sounded now and then', () => {
    expect(kept(() => Array.from({ length: 9 }, (_, seed) => told(seed + 200, 20, 0.3)))).toMatchSnapshot();
  });

  test('while the panel sounded often', () => {
    expect(kept(() => Array.from({ length: 6 }, (_, seed) => told(seed + 400, 30, 0.6)))).toMatchSnapshot();
  });
});
