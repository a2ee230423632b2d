// Contract of what tells whether the microphone hears the panel: four sounds in a row that were long enough or heard, of which one at most was heard.
// What is heard is told frame by frame.
import { describe, expect, test } from 'vitest';
import { BesidePanel } from '../../../src/voice/ownWords/besidePanel.ts';
import type { Endpoints, Sounding } from '../../../src/voice/ownWords/endpoints.ts';

/** A frame is 25 samples, and one comes each 10. */
const RATE = 1000;

/** Says at these frames, from 1, that something began, or ended that began at frame 3 of the ear. */
function ears(says: Readonly<Record<number, Sounding['sign']>>): Endpoints {
  let heard = 100;
  return {
    get heard() {
      return heard;
    },
    push() {
      heard += 1;
      const sign = says[heard - 100];
      return sign === undefined ? null : { sign, begins: 3 };
    },
  } as unknown as Endpoints;
}

function panel() {
  const beside = new BesidePanel(RATE);
  let left = 25;
  const push = (frames: number) => {
    const found = beside.push(new Float32Array(left + 10 * (frames - 1)));
    left = 10;
    return found;
  };
  const sound = (frames: number, says: Readonly<Record<number, Sounding['sign']>> = {}, person = false): boolean => {
    beside.begin(ears(says));
    if (frames > 0) push(frames);
    if (person) beside.wasPerson();
    beside.end();
    return beside.isUnheard;
  };
  return { beside, push, sound };
}
const HEARD = { 5: 'began' } as const;

describe('the microphone does not hear the panel', () => {
  test('after four sounds of 0.6 s that were not heard', () => {
    const { sound } = panel();
    expect([sound(60), sound(60), sound(60), sound(60), sound(60)]).toEqual([false, false, false, true, true]);
  });

  test('and shorter ones tell nothing, however many', () => {
    const { sound } = panel();
    expect([59, 59, 59, 59, 59, 1, 0].map((frames) => sound(frames))).not.toContain(true);
    expect([sound(60), sound(59), sound(60), sound(60), sound(59), sound(60)]).toEqual([false, false, false, false, false, true]);
  });

  test('also when one of the last four was heard, not when two were', () => {
    const { sound } = panel();
    for (let time = 0; time < 4; time++) sound(60);
    expect([sound(60, HEARD), sound(60), sound(60, HEARD), sound(60), sound(60), sound(60)]).toEqual([true, true, false, false, true, true]);
  });

  test('and a short one that was heard tells it', () => {
    const { sound } = panel();
    for (let time = 0; time < 4; time++) sound(60);
    expect([sound(10, HEARD), sound(10, HEARD)]).toEqual([true, false]);
  });

  test('where what was heard was a person, or only ended then', () => {
    const { sound } = panel();
    for (let time = 0; time < 4; time++) sound(60);
    expect([sound(60, HEARD, true), sound(60, HEARD, true), sound(60, { 5: 'ended' }), sound(60, { 5: 'slight' })]).toEqual([true, true, true, true]);
    expect([sound(10, HEARD, true), sound(60, HEARD), sound(60, HEARD)]).toEqual([true, true, false]);
  });
});

test('what ended is told with the frames since it began, and nothing else is', () => {
  const { beside, push } = panel();
  beside.begin(ears({ 2: 'began', 6: 'slight', 9: 'ended', 12: 'ended' }));
  expect(push(15).map(({ ago }) => ago)).toEqual([106, 109]);
});

test('it sounds from its beginning to its end; samples before and after are no part of it', () => {
  const { beside, sound } = panel();
  expect([beside.sounds, beside.push(new Float32Array(100))]).toEqual([false, []]);
  beside.end();
  beside.begin(ears({}));
  expect(beside.sounds).toBe(true);
  beside.end();
  expect(beside.sounds).toBe(false);
  // An end that ends nothing tells nothing.
  for (let time = 0; time < 3; time++) sound(60);
  beside.end();
  expect(beside.isUnheard).toBe(false);
});
