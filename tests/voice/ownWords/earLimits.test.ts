// Contract of the ear at its limits: what becomes of one sound by how sure it is, by what counts now, by what stands beside it. The sounds are
// bursts of noise, which no ear takes for talk, and how sure they are is told.
import { describe, expect, test } from 'vitest';
import { OwnWordsEar, type EarEvent } from '../../../src/voice/ownWords/ear.ts';
import type { Recogniser, Recognition } from '../../../src/voice/ownWords/recogniser.ts';
import { seededRandom } from '../../../src/practice/random.ts';

const RATE = 8000;
/** The same each time, whatever came before. */
function noise(time: number, level: number): number[] {
  const random = seededRandom(5);
  return Array.from({ length: Math.round(time * RATE) }, () => level * (random() - 0.5));
}
const quiet = (time: number): number[] => noise(time, 0.001);
const burst = (time: number, level = 0.3): number[] => noise(time, level);

/** A recogniser that is as sure of "undo" as it is told, sound by sound. */
function sureOf(...sureness: readonly (number | null)[]): Recogniser {
  let at = -1;
  return {
    words: ['undo', 'pause'],
    recognise() {
      at += 1;
      const sure = sureness[Math.min(at, sureness.length - 1)] ?? null;
      return sure === null ? null : ({ words: [{ word: 'undo' }, { word: 'pause' }], sureness: sure, evidence: {}, clearance: 20 } as unknown as Recognition);
    },
  };
}

function heard(recogniser: Recogniser, samples: readonly number[], counts?: readonly string[]): EarEvent[] {
  const ear = new OwnWordsEar(RATE, recogniser, counts && (() => counts));
  return Array.from({ length: Math.ceil(samples.length / 800) }, (_, at) => ear.push(Float32Array.from(samples.slice(800 * at, 800 * (at + 1))))).flat();
}
const told = (events: readonly EarEvent[]) =>
  events.flatMap((event) =>
    event.heard === 'beginning' ? [] : event.heard === 'nothing' ? [`nothing: ${event.because}, ${event.missed}`] : [`${event.heard}: ${event.word}`],
  );
const alone = [...quiet(0.6), ...burst(0.3), ...quiet(1)];

test.each([
  [3.2, ['word: undo']],
  [2.2, ['word: undo']],
  [2.19, ['unsure: undo']],
  [1, ['unsure: undo']],
  [0.99, ['nothing: unlike every word, null']],
  [null, ['nothing: unlike every word, null']],
] as const)('a sound that is sure by %s', (sureness, events) => {
  expect(told(heard(sureOf(sureness), alone))).toEqual(events);
});

test('a sound is told when it begins and where it lay; one that is certain at once, another when it has stayed alone for 0.3 s', () => {
  const at = (sureness: number) => heard(sureOf(sureness), alone);
  const [beginning, certain] = at(3.2);
  expect(beginning).toMatchObject({ heard: 'beginning' });
  expect(beginning?.at).toBeGreaterThan(0.63);
  expect(beginning?.at).toBeLessThan(0.7);
  // It begins at 0.6 s and ends at 0.9, with 0.12 s of the noise on both sides; 0.3 s of quiet end it.
  const word = certain?.heard === 'word' ? certain : null;
  for (const [time, about] of [[word?.began, 0.48], [word?.ended, 1.02], [word?.at, 1.2]] as const) expect(Math.abs((time ?? NaN) - about)).toBeLessThan(0.04); // prettier-ignore
  expect((at(3.19)[1]?.at ?? NaN) - (word?.at ?? NaN)).toBeCloseTo(0.3, 9);
});

test('a word that does not count now is told as that, from where it would have been asked about', () => {
  expect(told(heard(sureOf(3.2), alone, ['pause']))).toEqual(['nothing: not now, null']);
  expect(told(heard(sureOf(0.9), alone, ['pause']))).toEqual(['nothing: unlike every word, null']);
});

describe('a doubtful word', () => {
  const followed = (after: number) => [...quiet(0.6), ...burst(0.3), ...quiet(after), ...burst(0.3), ...quiet(1)];

  test('is given up when something follows it at once, and said to be missed where it was taken', () => {
    expect(told(heard(sureOf(2.5, 0), followed(0.45)))[0]).toBe('nothing: amid talk, undo');
    expect(told(heard(sureOf(1.5, 0), followed(0.45)))[0]).toBe('nothing: amid talk, null');
  });

  test('is told when that comes later', () => {
    expect(told(heard(sureOf(2.5, 0), followed(0.8)))[0]).toBe('word: undo');
  });

  test('that was given up makes talk of what follows within half a second', () => {
    expect(told(heard(sureOf(2.5, 3.5), followed(0.45)))).toEqual(['nothing: amid talk, undo', 'nothing: amid talk, undo']);
    expect(told(heard(sureOf(3.5, 3.5), followed(0.45)))).toEqual(['word: undo', 'word: undo']);
  });
});

test('what is too short for a word is that, and what is too long, however sure', () => {
  expect(told(heard(sureOf(9), [...quiet(0.6), ...burst(0.05), ...quiet(1)]))).toEqual(['nothing: too short, null']);
  expect(told(heard(sureOf(9), [...quiet(0.6), ...burst(1.9), ...quiet(1)]))).toEqual(['nothing: too long, null']);
});

describe('what comes while the panel sounds', () => {
  const ear = (recogniser: Recogniser) => {
    const own = new OwnWordsEar(RATE, recogniser);
    const feed = (samples: readonly number[], beside: boolean) =>
      Array.from({ length: Math.ceil(samples.length / 800) }, (_, at) => {
        const piece = Float32Array.from(samples.slice(800 * at, 800 * (at + 1)));
        return beside ? own.beside(piece) : own.push(piece);
      }).flat();
    return { room: (samples: readonly number[]) => told(feed(samples, false)), panel: (samples: readonly number[]) => told(feed(samples, true)) };
  };

  test('is told as missed while the panel may be heard itself', () => {
    const { room, panel } = ear(sureOf(9));
    room(quiet(0.6));
    expect(panel(alone)).toEqual(['nothing: beside the panel, undo']);
  });

  test('counts once four sounds of the panel were not heard, and it is certain', () => {
    const silentFour = (sureness: number) => {
      const { room, panel } = ear(sureOf(sureness));
      room(quiet(0.6));
      for (let at = 0; at < 4; at++) {
        panel(quiet(0.7));
        room(quiet(0.2));
      }
      return panel(alone);
    };
    expect([silentFour(3.2), silentFour(3.19), silentFour(2.1)]).toEqual([['word: undo'], ['nothing: beside the panel, undo'], []]);
  });

  test('lets go what waited, which stood alone', () => {
    const { room, panel } = ear(sureOf(2.5));
    expect(room([...quiet(0.6), ...burst(0.3), ...quiet(0.4)])).toEqual([]);
    expect(panel(quiet(0.1))).toEqual(['word: undo']);
  });

  test('and runs on behind it is the panel’s own', () => {
    const { room, panel } = ear(sureOf(9));
    room(quiet(0.6));
    panel(burst(0.5));
    expect(room([...burst(0.3), ...quiet(1)])).toEqual(['nothing: beside the panel, undo']);
    panel(quiet(0.3));
    expect(room([...quiet(0.6), ...burst(0.3), ...quiet(1)])).toEqual(['word: undo']);
  });
});
