// Contract of taking in a whole logbook, and of two windows that change the kit at once: nothing acknowledged is lost, and
// nothing is brought in without a copy of what was there.
import { describe, expect, test, vi } from 'vitest';
import { libraryWith, sweepRecord, T0 } from '../../logbook/libraryWith.ts';
import { ownWordsOf, type Take } from '../../../src/voice/ownWords/take.ts';
import { words } from '../../../src/words/catalogue.ts';
import { addKit } from './sweeping.ts';
import { Computer, settle, type Window } from './world.ts';

async function atWork(): Promise<{ computer: Computer; window: Window }> {
  const computer = new Computer();
  const window = await computer.open();
  addKit(window);
  await settle();
  return { computer, window };
}

const backup = libraryWith({ records: [sweepRecord('r', T0, 2, 9)], entries: [{ id: 'e', value: 5 }], notes: [{ id: 'n' }] });
const MANY = 1500;
const large = libraryWith({ records: Array.from({ length: MANY }, (_, index) => sweepRecord(`many-${index}`, T0 + index, 1, 5)) });
const lenses = ({ session }: Window): string[] => session.kit.value.lenses.map(({ name }) => name).sort();

describe('another logbook', () => {
  test('is joined with what is here, after a copy', async () => {
    const { computer, window } = await atWork();
    expect(await window.session.bring(backup, 'merge')).toEqual({ ok: true });
    expect(computer.copies.map(({ why }) => why)).toContain('before an import');
    expect(window.session.records.value.map(({ id }) => id)).toEqual(['r']);
    expect(window.session.kit.value.bodies).toHaveLength(2);
    const again = await computer.open();
    expect(again.session.entries.value.map(({ id }) => id)).toEqual(['e']);
    expect(again.session.kit.value).toEqual(window.session.kit.value);
  });

  test('brings its taught words beside those taught here, of which none is lost', async () => {
    const { computer, window } = await atWork();
    const take = (word: string, level: number): Take => ({ word, noise: Array(8).fill(level), frames: Array(64).fill(level) });
    const [mine, other] = [take('solid', 1), take('undo', 1)];
    computer.taught = [mine, other];
    await window.session.bringTaught([ownWordsOf('en-US', [take('solid', 2), take('left', 2)])], 'merge');
    expect(computer.taught).toEqual([mine, other, take('left', 2)]);
    await window.session.bringTaught([ownWordsOf('en-US', [take('solid', 3)])], 'replace');
    expect(computer.taught).toEqual([take('solid', 3), other, take('left', 2)]);
  });

  test('goes to disk in one write', async () => {
    const { computer, window } = await atWork();
    computer.log.length = 0;
    await window.session.bring(backup, 'merge');
    expect(computer.log.filter((line) => line.startsWith('write'))).toHaveLength(1);
  });

  test('that is large goes to disk in parts, tells how far it is, and bears a mark until all of it is there', async () => {
    const { computer, window } = await atWork();
    const shares: (number | null)[] = [];
    const stop = window.session.bringing.subscribe((share) => void shares.push(share));
    computer.log.length = 0;
    expect(await window.session.bring(large, 'merge')).toEqual({ ok: true });
    stop();
    const writes = computer.log.filter((line) => line.startsWith('write'));
    expect(writes[0]).toBe('write bringing');
    expect(writes.length).toBeGreaterThan(5);
    expect(computer.log.at(-1)).toBe('remove bringing');
    const told = shares.filter((share) => share !== null);
    expect(told.length).toBeGreaterThan(3);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBeNull();
    expect(window.session.records.value).toHaveLength(MANY);
    const again = await computer.open();
    expect(again.session.records.value).toHaveLength(MANY);
  });

  test('that is large and was broken off is gone at the next start, in one sentence, and nothing else is', async () => {
    const { computer, window } = await atWork();
    await window.session.bring(backup, 'merge');
    const before = structuredClone(computer.disk);
    computer.pass(60);
    computer.power = 4;
    void window.session.bring(large, 'replace');
    await vi.waitFor(() => expect(computer.power).toBe(0));
    await window.crash();
    computer.power = Infinity;
    expect(computer.disk).toHaveProperty('bringing');
    expect(Object.keys(computer.disk).length).toBeGreaterThan(Object.keys(before).length);

    const again = await computer.open();
    expect(computer.disk).toEqual(before);
    expect(again.session.records.value.map(({ id }) => id)).toEqual(['r']);
    expect(again.session.troubles.value.map(({ sentence }) => sentence)).toEqual([words('session').bringing.brokenOff]);
    expect(await again.session.bring(large, 'merge')).toEqual({ ok: true });
  });

  test('that is large and finds no room is told, tried in few writes, and is there whole once there is room', async () => {
    const { computer, window } = await atWork();
    computer.room = 2;
    const tried = computer.tries;
    const brought = await window.session.bring(large, 'merge');
    expect(brought).toEqual({ ok: false, fault: words('session').stored.notOnDisk });
    expect(computer.tries - tried).toBeLessThan(8);
    computer.room = Infinity;
    window.session.troubles.value.find(({ remedy }) => remedy)?.remedy?.run();
    await settle();
    expect(computer.disk).not.toHaveProperty('bringing');
    const again = await computer.open();
    expect(again.session.records.value).toHaveLength(MANY);
  });

  test('that comes in while another window saves keeps what that one saved', async () => {
    const { computer, window } = await atWork();
    const other = await computer.open();
    const bringing = window.session.bring(large, 'merge');
    other.session.noteOn({ of: 'b', at: T0, what: 'service', note: 'meanwhile' });
    await bringing;
    await settle();
    expect(window.session.notes.value.map(({ note }) => note)).toContain('meanwhile');
    expect(other.session.records.value).toHaveLength(MANY);
  });

  test('in place of what is here leaves nothing of it, and the copy brings it back', async () => {
    const { computer, window } = await atWork();
    computer.pass(60);
    await window.session.bring(backup, 'replace');
    expect(window.session.kit.value.bodies.map(({ id }) => id)).toEqual(['b']);
    computer.pass(60);
    const copies = await window.session.copies();
    const [newest] = copies.ok ? copies.value : [];
    if (newest === undefined) throw new Error('no copy');
    expect(await window.session.bringBack(newest)).toEqual({ ok: true });
    expect(window.session.records.value).toEqual([]);
    expect(window.session.kit.value.bodies.map(({ name }) => name)).toEqual(['Velde M1']);
    expect(computer.disk['record:r']).toBeUndefined();
  });

  test('reaches the other window whole, and a replaced kit does not come back from there', async () => {
    const { computer, window } = await atWork();
    const other = await computer.open();
    await window.session.bring(backup, 'replace');
    await settle();
    expect(other.session.kit.value.bodies.map(({ id }) => id)).toEqual(['b']);
    expect(other.session.entries.value.map(({ id }) => id)).toEqual(['e']);
    expect(other.session.notes.value.map(({ id }) => id)).toEqual(['n']);
  });

  test('that finds no room is told, shown, and written as soon as there is room', async () => {
    const { computer, window } = await atWork();
    computer.full = true;
    const brought = await window.session.bring(backup, 'merge');
    expect(brought).toMatchObject({ ok: false, fault: expect.stringMatching(/not on the disk yet/) });
    expect('record:r' in computer.disk).toBe(false);
    computer.full = false;
    window.session.troubles.value.find(({ id }) => id === 'storage')?.remedy?.run();
    await settle();
    expect('record:r' in computer.disk).toBe(true);
  });
});

describe('two windows', () => {
  test('that each add a lens at the same moment both keep both', async () => {
    const { computer, window } = await atWork();
    const other = await computer.open();
    const lost = computer.written.bind(computer);
    const held: Record<string, unknown>[] = [];
    computer.written = (changes) => void held.push(structuredClone(changes));
    window.session.saveLens({ name: 'Orrin 35 f/2' });
    other.session.saveLens({ name: 'Orrin 200 f/4' });
    await settle();
    computer.written = lost;
    for (const changes of held) computer.written(changes);
    for (let turn = 0; turn < 20; turn++) {
      await new Promise((go) => setTimeout(go, 5));
      await settle();
    }
    const all = ['Orrin 200 f/4', 'Orrin 35 f/2', 'Orrin 85 f/1.8'];
    expect([lenses(window), lenses(other), lenses(await computer.open())]).toEqual([all, all, all]);
  });

  test('that edit one body: the later save is refused, and told why', async () => {
    const { computer, window } = await atWork();
    const other = await computer.open();
    const [body] = window.session.kit.value.bodies;
    if (!body) throw new Error('no body');
    computer.pass(1);
    expect(window.session.putKit('bodies', { ...body, name: 'Velde M2' }, body.changed)).toMatchObject({ ok: true });
    await new Promise((go) => setTimeout(go, 20));
    expect(other.session.putKit('bodies', { ...body, name: 'Velde M3' }, body.changed)).toMatchObject({
      ok: false,
      fault: [{ field: null, sentence: expect.stringMatching(/changed in another window/) }],
    });
    expect(other.session.kit.value.bodies.map(({ name }) => name)).toEqual(['Velde M2']);
  });
});

test('a sweep begins from what the logbook remembers, at the value in the camera', async () => {
  const { window } = await atWork();
  const [situation] = window.session.kit.value.situations;
  if (!situation) throw new Error('no situation');
  const subject = { situation: situation.id, body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: situation.focalLength, distance: situation.distance };
  const conditions = { told: T0, light: null, temperature: null, firmware: null, note: null };
  const written = window.session.writeByHand({
    subject,
    scale: { min: -8, max: 8, step: 1 } as never,
    at: T0,
    conditions,
    typed: { known: 'value', chosen: 5 },
  });
  expect(written).toEqual({ ok: true });
  await window.session.begin({ with: 'kit', situation: situation.id });
  expect(window.session.sweep.value?.plan).toMatchObject({ start: 5, memory: { centres: [{ centre: 5, weight: 1 }] } });
});
