// Contract of what a session keeps: records, kit and settings, and what happens to entries that do not fit.
import { describe, expect, test } from 'vitest';
import { addKit, sweeping } from './sweeping.ts';
import { Computer, settle } from './world.ts';
import { moment } from '../../../src/units.ts';

describe('the record of a sweep', () => {
  test('a finished sweep is in the logbook before its outcome is said, with its whole journal', async () => {
    const { computer, window } = await sweeping();
    await window.tell('holding');
    await window.tell('flicker');
    await window.tell('undo');
    await window.tell('holding');
    await window.tell('flicker');
    computer.log.length = 0;
    await window.tell('finish');
    expect(computer.log).toEqual(['write live finished', expect.stringMatching(/^write record:/), expect.stringMatching(/^say /)]);
    const [record] = window.session.records.value;
    expect(record?.journal.map(({ did }) => did)).toEqual(['opened', 'began', 'judged', 'undid', 'began', 'judged', 'finished']);
    expect(record).toMatchObject({ practice: false, subject: { body: 'Velde M1', lens: 'Orrin 85 f/1.8' }, outcome: { tally: { holds: 1 } } });
  });

  test('a finish that is taken back leaves the logbook', async () => {
    const { computer, window } = await sweeping();
    await window.tell('holding');
    await window.tell('flicker');
    await window.tell('finish');
    await window.tell('undo');
    expect(window.session.records.value).toEqual([]);
    expect(Object.keys(computer.disk).filter((key) => key.startsWith('record:'))).toEqual([]);
  });

  test('a sweep that is left before its finish is finished, so that its holds are kept', async () => {
    const { computer, window } = await sweeping();
    await window.tell('holding');
    await window.tell('flicker');
    window.session.leave();
    await settle();
    expect(window.session.records.value).toHaveLength(1);
    expect(window.session.sweep.value).toBeNull();
    expect('live' in computer.disk).toBe(false);
  });

  test('a sweep without a hold leaves no record', async () => {
    const { window } = await sweeping();
    window.session.leave();
    await settle();
    expect(window.session.records.value).toEqual([]);
  });

  test('a panel that was closed between the finish and its record writes the record when it comes back', async () => {
    const { computer, window } = await sweeping();
    await window.tell('holding');
    await window.tell('flicker');
    await window.tell('finish');
    await window.crash();
    for (const key of Object.keys(computer.disk)) if (key.startsWith('record:')) delete computer.disk[key];
    const again = await computer.open();
    expect(again.session.records.value).toHaveLength(1);
  });
});

describe('kit and settings', () => {
  test('what was saved is there when the panel opens again', async () => {
    const computer = new Computer();
    const window = await computer.open();
    addKit(window);
    window.session.changeSettings({ voice: { rate: 1.5 }, manner: { care: 'thorough' } });
    await settle();
    const again = await computer.open();
    expect(again.session.kit.value).toEqual(window.session.kit.value);
    expect(again.session.settings.value).toMatchObject({ voice: { rate: 1.5, listen: 'off' }, manner: { care: 'thorough', order: 'fewest' } });
  });

  test('another window’s change is seen', async () => {
    const computer = new Computer();
    const [window, other] = [await computer.open(), await computer.open()];
    addKit(window);
    await settle();
    expect(other.session.kit.value.lenses.map(({ name }) => name)).toEqual(['Orrin 85 f/1.8']);
  });

  test('a form that does not fit gets a sentence beside each field, and nothing is saved', async () => {
    const computer = new Computer();
    const { session } = await computer.open();
    const saved = session.saveBody({ name: ' ', scale: { min: -20, max: Number.NaN, step: 0.5 }, arrows: 'absent' });
    expect(saved).toEqual({
      ok: false,
      fault: [
        { field: 'name', sentence: 'Give it a name you will recognise.' },
        { field: 'scale.max', sentence: expect.stringMatching(/^Enter the highest correction/) },
        { field: 'scale.step', sentence: expect.stringMatching(/^Enter how many corrections/) },
      ],
    });
    expect(session.saveSituation({ body: 'gone', lens: 'gone', converter: null, focalLength: 85, distance: 4250 })).toMatchObject({ ok: false });
    expect(session.kit.value.bodies).toEqual([]);
  });

  test('the same situation entered twice is one situation', async () => {
    const computer = new Computer();
    const window = await computer.open();
    addKit(window);
    const [one] = window.session.kit.value.situations;
    const again = window.session.saveSituation({ body: one!.body, lens: one!.lens, converter: null, focalLength: 85, distance: 4250 });
    expect(again).toEqual({ ok: true, value: one!.id });
    expect(window.session.kit.value.situations).toHaveLength(1);
  });
});

describe('reading what is stored', () => {
  test('an entry that does not fit is set aside whole and told; the rest is used', async () => {
    const computer = new Computer();
    addKit(await computer.open());
    await settle();
    const spoilt = { id: 'r1', finished: 'yesterday' };
    computer.disk['record:r1'] = spoilt;
    const { session } = await computer.open();
    expect(session.kit.value.bodies).toHaveLength(1);
    expect(session.records.value).toEqual([]);
    expect('record:r1' in computer.disk).toBe(false);
    expect(
      Object.entries(computer.disk)
        .filter(([key]) => key.startsWith('set-aside:record:r1:'))
        .map(([, value]) => value),
    ).toEqual([spoilt]);
    expect(session.troubles.value.map(({ sentence }) => sentence)).toEqual([expect.stringMatching(/record:r1.*kept whole/)]);
  });

  test('what a newer program wrote is left untouched, and nothing can be written over it', async () => {
    const computer = new Computer();
    computer.disk = { version: 99, kit: { shape: 'new' } };
    const { session } = await computer.open();
    expect(session.saveLens({ name: 'Orrin 35 f/2' })).toMatchObject({ ok: false });
    expect(await session.begin({ with: 'practice', arrows: 'absent' })).toMatchObject({ ok: false });
    session.changeSettings({ sound: false });
    await settle();
    expect(computer.disk).toEqual({ version: 99, kit: { shape: 'new' } });
    expect(session.troubles.value).toHaveLength(1);
  });

  test('a copy is kept once a day', async () => {
    const computer = new Computer();
    addKit(await computer.open());
    await settle();
    await computer.open();
    await computer.open();
    expect(computer.copies).toHaveLength(1);
    computer.pass(24 * 60 * 60);
    await computer.open();
    expect(computer.copies).toHaveLength(2);
  });

  test('lost copies are noticed and made again', async () => {
    const computer = new Computer();
    addKit(await computer.open());
    await settle();
    await computer.open();
    computer.copies = [];
    await computer.open();
    expect(computer.copies).toHaveLength(1);
  });

  test('where nothing is stored any more the newest copy is offered, and brings everything back', async () => {
    const computer = new Computer();
    addKit(await computer.open());
    await settle();
    await computer.open();
    computer.disk = {};
    const { session } = await computer.open();
    const offer = session.troubles.value.find(({ id }) => id === 'wiped');
    expect(offer?.sentence).toMatch(/^Nothing is stored here any more, but there is a copy/);
    offer?.remedy?.run();
    await settle();
    await settle();
    expect(session.kit.value.bodies.map(({ name }) => name)).toEqual(['Velde M1']);
    expect(session.troubles.value).toEqual([]);
  });

  test('bringing a copy back leaves a sweep under way alone and joins a newer kit with it', async () => {
    const computer = new Computer();
    addKit(await computer.open());
    await settle();
    await computer.open();
    computer.disk = {};
    const window = await computer.open();
    const newer = window.session.saveLens({ name: 'Orrin 35 f/2' });
    await window.session.begin({ with: 'practice', arrows: 'absent' });
    await settle();
    const sweep = window.session.sweep.value;
    window.session.troubles.value.find(({ id }) => id === 'wiped')?.remedy?.run();
    await settle();
    await settle();
    expect(newer.ok).toBe(true);
    expect(window.session.sweep.value).toBe(sweep);
    expect(window.session.kit.value.lenses.map(({ name }) => name).sort()).toEqual(['Orrin 35 f/2', 'Orrin 85 f/1.8']);
    expect(Object.keys(computer.disk).filter((key) => key.startsWith('set-aside:kit:'))).toHaveLength(1);
  });

  test('the first start of all offers nothing and keeps no copy', async () => {
    const computer = new Computer();
    computer.time = moment(5);
    const { session } = await computer.open();
    expect(session.troubles.value).toEqual([]);
    expect(computer.copies).toEqual([]);
    expect(computer.disk).toEqual({ version: 3 });
  });
});
