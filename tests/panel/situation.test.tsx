// @vitest-environment happy-dom
// Contract of a situation's page: what was measured and what stands in the camera are told apart, values can be put in by
// hand, and nothing old is lost.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import type { ProofRecord } from '../../src/logbook/proofRecord.ts';
import { newBody, newLens } from '../../src/kit/kit.ts';
import { millimetres, moment, seconds, steps } from '../../src/units.ts';
import { FakeSession, KIT, SUBJECT } from './fakeSession.ts';
import { behindMore, lookUp, click, partsRead, read, show, text, type } from './show.tsx';

afterEach(cleanup);

const enter = (label: string, value: string) => act(() => void type(label, value));
const press = (name: string | RegExp) => act(async () => void click(name));

async function situation(session = new FakeSession()): Promise<FakeSession> {
  await show(session);
  await press('Logbook');
  await partsRead();
  await press(/Orrin 85/);
  await partsRead();
  return session;
}

test('a value that was only measured says so, and stands once it is entered', async () => {
  const measured = new FakeSession().open().hold('dark', 0).hold('steady', 6);
  measured.input({ told: 'finish', by: 'key', heard: null });
  const session = await situation(new FakeSession({ records: [measured.asRecord('one')] }));
  expect(text()).toContain('not entered yet');
  await enter('Value in the camera', '6');
  await press('Save as entered');
  expect(session.entries.value).toMatchObject([{ value: 6, record: 'one', subject: { situation: 'orrin-85-near' } }]);
  expect(text()).toContain('Noted: +6 is in the camera.');
});

test('a value is noted as entered, or saved by hand, when it is on disk, and not where that cannot be', async () => {
  const measured = new FakeSession().open().hold('dark', 0).hold('steady', 6);
  measured.input({ told: 'finish', by: 'key', heard: null });
  const session = await situation(new FakeSession({ records: [measured.asRecord('one')] }));
  let written = (_isThere: boolean): void => undefined;
  const stall = () => void (session.disk = new Promise((done) => (written = done)));
  for (const [label, name, done] of [
    ['Value in the camera', 'Save as entered', 'Noted: +6 is in the camera.'],
    ['One end', 'Save the value', 'Saved in the logbook.'],
  ] as const) {
    await enter(label, '6');
    if (label === 'One end') await enter('Other end', '8');
    stall();
    await press(name);
    expect(text()).not.toContain(done);
    await act(async () => written(true));
    expect(text()).toContain(done);
    stall();
    await press(name);
    await act(async () => written(false));
    expect(text()).not.toContain(done);
  }
  expect(text()).toContain('It is shown here but is not on the disk yet.');
});

test('an entry with another value than the one measured is told as different, and both stay in the history', async () => {
  const measured = new FakeSession().open().hold('dark', 0).hold('steady', 6);
  measured.input({ told: 'finish', by: 'key', heard: null });
  await situation(new FakeSession({ records: [measured.asRecord('one')] }));
  await enter('Value in the camera', '-2');
  await press('Save as entered');
  expect(text()).toMatch(/entered .*, but \+\d+ was measured/);
  expect(text()).toContain('\u22122 entered in the camera');
  expect(text()).toContain('found in a sweep');
});

test('a value off the scale or a day to come is refused in a sentence, and nothing is noted', async () => {
  const session = await situation();
  await enter('Value in the camera', '99');
  await press('Save as entered');
  expect(text()).toContain('Enter a correction from \u221220 to +20.');
  await enter('Value in the camera', '3');
  const [date] = screen.getAllByLabelText('Date');
  await act(() => void fireEvent.input(date ?? document.body, { target: { value: '2099-01-01' } }));
  await press('Save as entered');
  expect(text()).toContain('It cannot be after today.');
  expect(session.entries.value).toEqual([]);
});

test('both ends typed by hand give the centre, and both choices where the count is even', async () => {
  const session = await situation();
  await enter('One end', '3');
  await enter('Other end', '8');
  expect(text()).toContain('The centre is +5.5.');
  expect(screen.getByRole('radio', { name: '+5' })).toHaveProperty('checked', true);
  await act(() => void fireEvent.click(screen.getByRole('radio', { name: '+6' })));
  await press('Save the value');
  expect(session.byHand.value).toMatchObject([{ source: 'by hand', finding: { known: 'band', low: 3, high: 8, chosen: 6 } }]);
  expect(text()).toContain('put in by hand');
});

test('the answer says how sure the value is, what was measured before and that it is not due, and figures are behind one press', async () => {
  const measured = new FakeSession().open().hold('dark', 0).hold('steady', 6);
  measured.input({ told: 'finish', by: 'key', heard: null });
  const one = measured.asRecord('one');
  const day = 86_400_000;
  const at = (id: string, days: number, chosen: number) => ({
    ...one,
    id,
    finished: moment(one.finished - days * day),
    outcome: {
      ...BAND,
      low: steps(chosen - 3),
      high: steps(chosen + 3),
      centre: chosen,
      chosen: steps(chosen),
      interval: { from: chosen - 0.5, to: chosen + 0.5 },
    },
  });
  await situation(new FakeSession({ records: [at('one', 0, 4), at('two', 60, 4)] }));
  const answer = screen.getByRole('region', { name: 'Last value' });
  expect(answer.textContent).toMatch(/97% sure within one step/);
  expect(answer.textContent).toMatch(/Measured 2 times since .* 20\d\d: \+4, \+4/);
  expect(text()).toContain('Not due again yet.');
  const rooms = [...document.querySelectorAll<HTMLDetailsElement>('.rooms > details')];
  expect(rooms.map(({ open }) => open)).not.toContain(true);
  expect(screen.getByText('Within one step').closest('tr')?.textContent).toContain('97% sure');
});

test('the other situations of the lens are one press away, each with its value', async () => {
  const near = KIT.situations[0]!;
  const far = { ...near, id: 'far', distance: millimetres(9000) };
  await situation(new FakeSession({ kit: { ...KIT, situations: [near] } }));
  expect(screen.queryByText('Other situations of this lens')).toBeNull();
  cleanup();
  await show(new FakeSession({ kit: { ...KIT, situations: [near, far] } }));
  await press('Logbook');
  await partsRead();
  await press(/85\u00a0mm at 4\.25\u00a0m/);
  await partsRead();
  await press(/85\u00a0mm at 9\u00a0m/);
  await partsRead();
  expect(text()).toContain('85 mm at 9 m');
  expect(read(screen.getByText('Other situations of this lens').closest('details'))).toContain('4.25 m');
});

test('a value read off the camera is at once the one in force', async () => {
  const session = await situation();
  await act(() => void fireEvent.click(screen.getByRole('radio', { name: 'Only the value the camera has now' })));
  await enter('Value now', '4');
  await press('Save the value');
  expect(session.entries.value).toMatchObject([{ value: 4 }]);
});

test('a retired situation leaves the list and keeps its page', async () => {
  const session = await situation();
  await press('Retire this situation');
  expect(session.kit.value.situations[0]?.retired).not.toBeNull();
  expect(session.kit.value.situations).toHaveLength(KIT.situations.length);
});

test('what was measured can be re-checked quickly or measured anew', async () => {
  const measured = new FakeSession().open().hold('dark', 0).hold('steady', 6);
  measured.input({ told: 'finish', by: 'key', heard: null });
  const session = await situation(new FakeSession({ records: [measured.asRecord('one')] }));
  await press('Quick re-check');
  expect(session.asked).toEqual(['begin with kit, quick']);
});

test('a value can be put in by hand for a lens that was never swept, straight from the start', async () => {
  const session = await show(new FakeSession({ kit: { ...KIT, situations: [] } }));
  await lookUp('Orrin 85 f/1.8');
  await behindMore('Put a value in by hand instead');
  await partsRead();
  await enter('One end', '2');
  await enter('Other end', '9');
  expect(text()).toContain('The centre is +5.5.');
  await press('Save the value');
  expect(session.kit.value.situations).toMatchObject([{ body: 'm1', lens: 'orrin-85', focalLength: 85, distance: 4250 }]);
  expect(session.byHand.value).toMatchObject([{ source: 'by hand', finding: { low: 2, high: 9, chosen: 5 } }]);
});

test('before a value is entered, it is told which lens shares its place in the body', async () => {
  const copy = { ...newLens('copy', 'Orrin 85 f/1.8', moment(0)), serial: 'A12' };
  const body = { ...newBody('m1', 'Velde M1', moment(0)), copies: 'share a value' as const };
  const other = { ...KIT.situations[0]!, id: 'other', lens: 'copy' };
  await show(new FakeSession({ kit: { ...KIT, bodies: [body], lenses: [...KIT.lenses, copy], situations: [...KIT.situations, other] } }));
  await press('Logbook');
  await partsRead();
  await act(() => void fireEvent.click(screen.getAllByRole('button', { name: /Orrin 85/ })[0]!));
  await partsRead();
  expect(text()).toContain('Velde M1 cannot tell Orrin 85 f/1.8 and Orrin 85 f/1.8 (A12) apart. They share one stored value');
});

test('two sweeps that differ by more than their intervals allow are named so, with what to check and the odds', async () => {
  const measured = new FakeSession().open().hold('dark', 0).hold('steady', 6);
  measured.input({ told: 'finish', by: 'key', heard: null });
  const one = measured.asRecord('one');
  const found = (chosen: number) =>
    ({
      ...BAND,
      low: steps(chosen - 3),
      high: steps(chosen + 3),
      centre: chosen,
      chosen: steps(chosen),
      interval: { from: chosen - 0.75, to: chosen + 0.75 },
    }) as const;
  const other = { ...one, id: 'two', finished: moment(one.finished + 86_400_000), outcome: found(6) };
  await situation(new FakeSession({ records: [other, { ...one, outcome: found(2) }] }));
  expect(text()).toContain('The last two are 4 steps apart. Chance explains up to 1.1 steps. They differ by more than that.');
  expect(text()).toMatch(/The sweeps differ.*Compare the notes.*Odds that they differ: (\d+|more than 1,000) to 1/);
  cleanup();
  await situation(
    new FakeSession({
      records: [
        { ...other, outcome: found(2.5) },
        { ...one, outcome: found(2) },
      ],
    }),
  );
  expect(text()).toContain('They agree.');
  expect(text()).not.toContain('The sweeps differ');
});

const PHOTOGRAPHED: ProofRecord = {
  id: 'p',
  at: moment(0),
  practice: false,
  subject: SUBJECT,
  proof: { is: 'one', taken: null, error: { value: 12, low: 9, high: 15 }, depth: { front: 40, behind: 44 }, sharp: 'not sharp' },
  crops: 'pair',
};

test('what photographs showed stands in the history with its two crops, which can be erased alone, and then the figures', async () => {
  const kept = new FakeSession({ proofs: [PHOTOGRAPHED] });
  kept.crops.set('pair', { reference: new Blob(['live view']), shot: new Blob(['shot']) });
  const session = await situation(kept);
  expect(text()).toContain('not sharp in one picture, 1 Jan 1970');
  expect(screen.queryByAltText('Focused in live view')).toBeNull();
  const more = screen.getByText('See its crops, or erase it').closest('details')!;
  await act(() => {
    more.open = true;
    more.dispatchEvent(new Event('toggle'));
  });
  await partsRead();
  expect([screen.getByAltText('Focused in live view'), screen.getByAltText('Focused with autofocus')]).toHaveLength(2);
  await press('Erase the crops');
  await partsRead();
  expect(text()).toContain('There are no crops of it in this browser.');
  expect(session.crops.size).toBe(0);
  expect(text()).toContain('not sharp in one picture');
  await press('Erase it from the history');
  await partsRead();
  expect(session.proofs.value).toEqual([]);
  expect(text()).not.toContain('not sharp in one picture');
});

test('what the practice camera showed is not in the history of a real situation', async () => {
  await situation(new FakeSession({ proofs: [{ ...PHOTOGRAPHED, practice: true }] }));
  expect(text()).toContain('Nothing was measured, entered or photographed here yet.');
});

const BAND = { found: 'band', other: null, within: 0.97, ends: 'seen', tally: { holds: 9, seconds: seconds(90) } } as const;
