// Contract of telling whose sweep it is: at any time, on disk before it is said, no hold lost, and a result that nobody named
// is kept under a stand-in until it gets its name.
import { expect, test } from 'vitest';
import { isNamed } from '../../../src/sweep/named.ts';
import { Computer, settle, type Window } from './world.ts';

const SHORT = { min: -8, max: 8, step: 1 };

async function begun(about: Parameters<Window['session']['describe']>[0] = { scale: SHORT }) {
  const computer = new Computer();
  const window = await computer.open();
  expect(await window.session.begin({ with: 'told', about })).toEqual({ ok: true });
  await settle();
  return { computer, window };
}

async function hold(window: Window, word: 'solid' | 'flicker' | 'nothing'): Promise<void> {
  await window.tell('holding');
  if (word === 'solid') await window.ring('hold time');
  await window.tell(word);
}

const planOf = ({ session }: Window) => session.sweep.value?.plan;
const onDisk = ({ disk }: Computer) => (disk['live'] as { plan: { subject: unknown; scale: unknown } }[] | undefined)?.[0]?.plan;
const recordsOn = ({ disk }: Computer) => Object.keys(disk).filter((key) => key.startsWith('record:'));

test('a sweep begins with nothing named, on the usual scale, at the value the body is set to', async () => {
  const { computer, window } = await begun({});
  expect(planOf(window)).toMatchObject({ scale: { min: -20, max: 20, step: 1 }, arrows: 'absent', start: 0, subject: { body: null, lens: null } });
  const phase = window.session.sweep.value?.phase;
  expect(phase).toMatchObject({ name: 'dialling', next: { value: 0 } });
  expect(onDisk(computer)).toEqual(planOf(window));
  expect(window.session.kit.value).toEqual({ bodies: [], lenses: [], converters: [], situations: [] });
});

test('told between two holds, the name is on disk, the holds stay, and what is said next does not change', async () => {
  const { computer, window } = await begun();
  await hold(window, 'solid');
  const before = window.session.sweep.value;
  expect(window.session.describe({ body: { name: 'Velde M1' }, lens: { name: 'Corvid 85 f/1.8' } })).toEqual({ ok: true });
  await settle();
  const after = window.session.sweep.value;
  expect(after?.plan.subject).toMatchObject({ body: 'Velde M1', lens: 'Corvid 85 f/1.8', focalLength: 85, distance: 4250 });
  expect([after?.holds, after?.phase]).toEqual([before?.holds, before?.phase]);
  expect(onDisk(computer)).toEqual(after?.plan);
  expect(window.session.kit.value.lenses).toMatchObject([{ name: 'Corvid 85 f/1.8', focal: { from: 85, to: 85 } }]);
});

test('the parts may be told one by one, in any order, also while a hold is under way', async () => {
  const { window } = await begun();
  window.session.describe({ lens: { name: 'Corvid pancake' } });
  await window.tell('holding');
  window.session.describe({ body: { name: 'Velde M1' } });
  expect(planOf(window)?.subject).toMatchObject({ body: { name: 'Velde M1' }, lens: { name: 'Corvid pancake' }, focalLength: null });
  window.session.describe({ focalLength: 40 });
  expect(planOf(window)?.subject).toMatchObject({ lens: 'Corvid pancake', focalLength: 40, distance: 2000 });
  expect(window.session.sweep.value?.phase.name).toBe('holding');
});

test('a focal length out of range is refused in one sentence, and nothing told before it is lost', async () => {
  const { window } = await begun();
  expect(window.session.describe({ lens: { name: 'Corvid 24-70 f/4' }, focalLength: 8500 })).toEqual({
    ok: false,
    fault: { of: 'focalLength', sentence: 'Enter the focal length in millimetres, from 4 to 2000.' },
  });
  expect(planOf(window)?.subject).toMatchObject({ lens: { name: 'Corvid 24-70 f/4' }, focalLength: null });
});

test('another scale is taken where every hold lies on it, and refused in a sentence where one does not', async () => {
  const { computer, window } = await begun();
  await hold(window, 'solid');
  expect(window.session.describe({ scale: { min: -10, max: 10, step: 1 } })).toEqual({ ok: true });
  expect(planOf(window)?.scale).toEqual({ min: -10, max: 10, step: 1 });
  expect(window.session.sweep.value?.holds).toHaveLength(1);
  const refused = window.session.describe({ scale: { min: 3, max: 9, step: 1 } });
  expect(refused).toEqual({ ok: false, fault: { of: 'scale', sentence: expect.stringMatching(/^0 was already held and is not in this range\./) } });
  await settle();
  expect(onDisk(computer)?.scale).toEqual({ min: -10, max: 10, step: 1 });
});

test('the scale and the arrows of a body of the kit come with it, and what is told of them goes to it', async () => {
  const { window } = await begun({});
  const body = window.session.saveBody({ name: 'Velde M2', scale: { min: -6, max: 6, step: 1 }, arrows: 'right-is-up' });
  if (!body.ok) throw new Error('refused');
  window.session.describe({ body: { id: body.value } });
  expect(planOf(window)).toMatchObject({ scale: { min: -6, max: 6 }, arrows: 'right-is-up' });
  window.session.describe({ arrows: 'right-is-down' });
  expect(window.session.kit.value.bodies).toMatchObject([{ name: 'Velde M2', arrows: 'right-is-down' }]);
});

test('a new scale that moves the value in hand has it said again', async () => {
  const { window } = await begun({});
  window.session.describe({ scale: { min: 2, max: 12, step: 1 } });
  await settle();
  const phase = window.session.sweep.value?.phase;
  expect(phase && 'next' in phase && phase.next.value).toBeGreaterThanOrEqual(2);
  expect(window.session.announcement.value).toContain(`Set +${phase && 'next' in phase ? phase.next.value : ''}:`);
});

test('before the first hold a known situation brings what the logbook remembers of it; after it nothing already believed moves', async () => {
  const { window } = await begun({ scale: SHORT, body: { name: 'Velde M1' }, lens: { name: 'Corvid 85' } });
  await hold(window, 'solid');
  await window.tell('finish');
  window.session.leave();
  await settle();
  await window.session.begin({ with: 'told', about: { body: { name: 'Velde M1' } } });
  window.session.describe({ lens: { name: 'corvid  85' } });
  expect(planOf(window)?.memory.centres).toHaveLength(1);
  expect(window.session.kit.value.lenses).toHaveLength(1);
});

test('what is told at the end names the record, and its journal opens with that name', async () => {
  const { computer, window } = await begun();
  await hold(window, 'solid');
  await window.tell('finish');
  expect(recordsOn(computer)).toEqual([]);
  window.session.describe({ body: { name: 'Velde M1' }, lens: { name: 'Corvid 50 f/2' } });
  await settle();
  const [record] = window.session.records.value;
  expect(record?.subject).toMatchObject({ lens: 'Corvid 50 f/2', focalLength: 50 });
  expect(record?.journal[0]).toMatchObject({ plan: { subject: record?.subject } });
  expect(recordsOn(computer)).toHaveLength(1);
});

test('left without a name, the result is kept under a stand-in and can be named later, with everything that rests on it', async () => {
  const { computer, window } = await begun();
  await hold(window, 'solid');
  window.session.leave();
  await settle();
  const [kept] = window.session.records.value;
  expect(kept?.subject.lens).toMatch(/^Lens without a name, .*\d:\d\d$/);
  expect(window.session.kit.value.lenses).toMatchObject([{ standIn: true }]);
  const situation = kept?.subject.situation ?? '';
  expect(window.session.nameKept(situation, { lens: { name: 'Corvid 85 f/1.8' }, body: { name: 'Velde M1' } })).toEqual({ ok: true });
  await settle();
  expect(window.session.records.value).toMatchObject([{ subject: { lens: 'Corvid 85 f/1.8', body: 'Velde M1', focalLength: 85, distance: 4250 } }]);
  const inUse = [...window.session.kit.value.lenses, ...window.session.kit.value.bodies, ...window.session.kit.value.situations].filter(
    ({ retired }) => retired === null,
  );
  expect(inUse).toHaveLength(3);
  expect(inUse.every(({ standIn }) => standIn === undefined)).toBe(true);
  expect(recordsOn(computer)).toHaveLength(1);
});

test('two sweeps that nobody named stay apart, and one body without a name serves both', async () => {
  const { computer, window } = await begun();
  for (let count = 0; count < 2; count += 1) {
    await hold(window, 'solid');
    window.session.leave();
    await settle();
    computer.pass(600);
    await window.session.begin({ with: 'told', about: {} });
  }
  expect(new Set(window.session.records.value.map(({ subject }) => subject.situation)).size).toBe(2);
  expect(window.session.kit.value.bodies).toHaveLength(1);
});

test('a sweep in which nothing was held leaves nothing behind', async () => {
  const { window } = await begun();
  window.session.leave();
  await settle();
  expect([window.session.records.value, window.session.kit.value.lenses]).toEqual([[], []]);
});

test('whoever needs a subject gets a stand-in, once', async () => {
  const { window } = await begun();
  await hold(window, 'solid');
  await window.tell('finish');
  const first = window.session.named();
  expect(window.session.named()).toEqual(first);
  expect(window.session.kit.value.lenses).toHaveLength(1);
  const subject = planOf(window)?.subject;
  expect(subject && isNamed(subject)).toBe(true);
});

test('a crash between the end and the name loses neither', async () => {
  const { computer, window } = await begun();
  await hold(window, 'solid');
  await window.tell('finish');
  await window.crash();
  const again = await computer.open();
  expect(again.session.sweep.value?.phase.name).toBe('finished');
  again.session.describe({ body: { name: 'Velde M1' }, lens: { name: 'Corvid 85' } });
  await settle();
  expect(again.session.records.value).toMatchObject([{ subject: { lens: 'Corvid 85' } }]);
});

test('a length that is corrected leaves no empty situation in the logbook', async () => {
  const { window } = await begun({ scale: SHORT, body: { name: 'Velde M1' }, lens: { name: 'Corvid 85' } });
  window.session.describe({ distance: 6000 });
  expect(window.session.kit.value.situations.filter(({ retired }) => retired === null)).toMatchObject([{ distance: 6000 }]);
});

test('left for the next lens, the panel knows for which', async () => {
  const { window } = await begun();
  await hold(window, 'solid');
  await window.tell('finish');
  window.session.nextLens('Corvid 35');
  await settle();
  expect([window.session.sweep.value, window.session.leftFor.value]).toEqual([null, { name: 'Corvid 35' }]);
});

test('“next lens” with a name, said on the result, leaves for the lens of that name, its number in figures', async () => {
  const computer = new Computer();
  const window = await computer.open();
  window.session.changeSettings({ voice: { listen: 'browser' } });
  await window.session.begin({ with: 'told', about: { scale: SHORT } });
  await settle();
  await hold(window, 'solid');
  await window.tell('finish');
  expect(window.ear?.onHeard([{ text: 'next lens Corvid eighty-five' }], true)).toBe(true);
  await expect.poll(() => window.session.leftFor.value).toEqual({ name: 'Corvid 85' });
});
