// Contract of what follows a result, in a session: the mark is on disk before it is said, by word as by key; undo takes it back
// before anything else; "next" leaves.
import { expect, test } from 'vitest';
import { sweeping } from './sweeping.ts';
import { settle, type Window } from './world.ts';

const HOLDS = { low: -2, high: 4 };

/** A sweep on real kit, held until the finish is offered, and accepted. */
async function ended(settings: Parameters<typeof sweeping>[0] = {}) {
  const { computer, window } = await sweeping(settings);
  for (let hold = 0; hold < 30 && phase(window) !== 'offered'; hold++) {
    const { phase: standing } = window.session.sweep.value ?? {};
    const value = standing && 'next' in standing ? standing.next.value : 0;
    const outside = Math.max(HOLDS.low - value, value - HOLDS.high);
    await window.tell('holding');
    if (outside <= 0) await window.ring('hold time');
    await window.tell(outside <= 0 ? 'solid' : outside <= 1 ? 'delayed' : outside <= 5 ? 'flicker' : 'nothing');
  }
  await window.tell('accept');
  computer.log.length = 0;
  return { computer, window };
}

const phase = ({ session }: Window) => session.sweep.value?.phase.name;
const marks = (disk: object): string[] => Object.keys(disk).filter((key) => key.startsWith('entry:'));

test('the value is marked as entered on disk before it is said, with the sweep it rests on', async () => {
  const { computer, window } = await ended();
  await window.tell('entered');
  expect(computer.log).toEqual([expect.stringMatching(/^write entry:/), 'say Plus one is marked as entered.']);
  expect(window.session.entries.value).toMatchObject([{ value: 1, record: window.session.records.value[0]?.id, subject: { body: 'Velde M1' } }]);
  expect(window.session.heard.value?.became).toBe('+1 is marked as entered in the camera. Undo takes the mark back.');
});

test('undo takes the mark back, from the disk too, and only then the finish', async () => {
  const { computer, window } = await ended();
  await window.tell('entered');
  await window.tell('undo');
  expect([marks(computer.disk), window.session.entries.value, phase(window)]).toEqual([[], [], 'finished']);
  expect(window.session.announcement.value).toBe('The mark is taken back: +1 does not count as entered.');
  await window.tell('undo');
  expect(phase(window)).toBe('offered');
});

test('what became of a mark is shown when it is on disk, and so is what took it back', async () => {
  const { computer, window } = await ended();
  const shown = (): string | undefined => window.session.heard.value?.became;
  const marking = computer.stall();
  await window.tell('entered');
  expect(shown()).not.toContain('is marked as entered');
  expect([...window.session.unwritten.value]).toEqual([expect.stringMatching(/^entry:/)]);
  await marking();
  expect(shown()).toContain('+1 is marked as entered');
  expect([...window.session.unwritten.value]).toEqual([]);
  const takingBack = computer.stall();
  await window.tell('undo');
  expect(shown()).not.toContain('is taken back');
  await takingBack();
  expect(shown()).toContain('The mark is taken back');
});

test('a panel that was closed after the mark still knows it, and undo takes it back', async () => {
  const { computer, window } = await ended();
  await window.tell('entered');
  await window.crash();
  const again = await computer.open();
  await again.tell('entered');
  expect(marks(computer.disk)).toHaveLength(1);
  await again.tell('undo');
  expect(marks(computer.disk)).toEqual([]);
});

test('by voice the words of a result are heard until it is left: entered, undo, repeat, next', async () => {
  const { computer, window } = await ended({ voice: { listen: 'browser' } });
  const say = async (text: string): Promise<void> => {
    await window.said();
    expect(window.ear?.onHeard([{ text }], true)).toBe(true);
    await settle();
  };
  await say('entered');
  expect(marks(computer.disk)).toHaveLength(1);
  await say('undo');
  expect(marks(computer.disk)).toEqual([]);
  await say('repeat');
  expect(computer.log.at(-1)).toBe('say Enter plus one, then say entered.');
  await say('next');
  expect(window.session.sweep.value).toBeNull();
  expect(window.earOpen).toBe(false);
});

test('a value shifted on purpose is the one that is marked, while its screen proposes it', async () => {
  const { window } = await ended();
  const shifted = window.session.sweep.value?.plan.scale.max ?? null;
  window.session.propose(shifted);
  await window.tell('entered');
  expect(window.session.entries.value.at(-1)?.value).toBe(shifted);
});

test('before the finish nothing can be marked, and that is said', async () => {
  const { window } = await sweeping();
  await window.tell('entered');
  expect(window.session.entries.value).toEqual([]);
  expect(window.session.heard.value?.became).toBe('There is no result yet. To end the sweep as it stands, say “finish”.');
});
