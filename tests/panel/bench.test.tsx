// @vitest-environment happy-dom
// Contract of the bench and its walk on the screen: what is typed stays and is reckoned at once, what does not fit is one
// sentence, and what was set up goes with the sweep it was set up for.
import { cleanup, screen, waitFor } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { BenchRecord } from '../../src/optics/setUp/reading.ts';
import { Plan } from '../../src/sweep/plan.ts';
import * as v from 'valibot';
import { FakeSession, PLAN } from './fakeSession.ts';
import { click, key, show, text, type } from './show.tsx';

afterEach(cleanup);

const enter = (label: string, typed: string) => act(() => void type(label, typed));
const press = (name: string | RegExp) => act(() => void click(name));

async function atTheBench(session = new FakeSession()): Promise<FakeSession> {
  await show(session);
  await press('Set up the bench');
  await waitFor(() => screen.getByRole('heading', { name: 'Distance' }));
  return session;
}

async function walking(session?: FakeSession): Promise<FakeSession> {
  const mine = await atTheBench(session);
  await enter('Widest aperture', '1.8');
  await press('Walk through the set-up');
  await waitFor(() => screen.getByText(/^Step 1 of/));
  return mine;
}

test('the distance is judged at once, and the aperture gives depth, step and tilt', async () => {
  await atTheBench();
  expect(text()).toContain('4.25 m from the film plane, 50 focal lengths: the general-purpose distance.');
  expect(text()).toContain('Enter the widest aperture to see depth of field');
  await enter('Widest aperture', 'f/1.8');
  expect(text()).toMatch(/One step moves the focus about [\d.]+ mm at the target, \d+ % of the depth behind it: an estimate\./);
  expect(text()).toMatch(/Square to [\d.]+\u00b0/);
});

test.each([
  ['Widest aperture', '0', 'Enter the aperture as the lens or the camera shows it, such as 2.8: it lies between 0.7 and 128.'],
  ['Distance as measured', 'far', 'Write the distance in metres, such as 1.75.'],
  ['Printed scale measures, mm', '9', 'Measure the scale again, in millimetres, between the outer edges of its end marks: 100 is expected.'],
])('%s “%s” is told in one sentence and stays as it was typed', async (label, typed, sentence) => {
  await atTheBench();
  await enter(label, typed);
  expect(text()).toContain(sentence);
  expect(screen.getByLabelText<HTMLInputElement>(label).value).toBe(typed);
});

test('a print at 96 % may be kept or made anew, and a target nearer than the lens can focus is refused', async () => {
  await atTheBench();
  await enter('Printed scale measures, mm', '96');
  expect(text()).toContain('The print came out at 96 %: print it again at 100 %, not fitted to the page, or keep it');
  await enter('Closest focus of the lens', '5');
  expect(text()).toContain('4.25 m is nearer than this lens can focus: put the target at 5 m or farther');
});

test('the light is judged from what the camera shows', async () => {
  await atTheBench();
  await enter('ISO', '100');
  await enter('Aperture', '2.8');
  await enter('Shutter', '1/8');
  expect(text()).toContain('Too dim for good phase detection');
  await enter('Shutter', '1/125');
  expect(text()).toContain('Plenty of light.');
});

test('what was typed is still there after a look elsewhere', async () => {
  await atTheBench();
  await enter('Widest aperture', '2.8');
  await press('Back');
  await press('Set up the bench');
  await waitFor(() => screen.getByRole('heading', { name: 'Distance' }));
  expect(screen.getByLabelText<HTMLInputElement>('Widest aperture').value).toBe('2.8');
});

test('the page to print is opened for this rig', async () => {
  const session = await atTheBench();
  await enter('Widest aperture', '1.8');
  await press('Open the page to print');
  const [asked = ''] = session.asked;
  expect(JSON.parse(decodeURIComponent(asked.replace('target.html#', '')))).toMatchObject({ paper: 'A4', area: 2.5, sensor: { width: 36, height: 24 } });
});

test('keys walk on, back and again, each step is spoken, and a reading is kept', async () => {
  const session = await walking();
  await waitFor(() => expect(session.said).toEqual(['Note the correction stored now.']));
  await enter('Correction stored now', '-3.5');
  await press('Keep this reading');
  expect(text()).toContain('Enter a whole number of the scale');
  await enter('Correction stored now', '-3');
  await press('Keep this reading');
  expect(text()).toContain('Kept: correction stored before: \u22123');
  await act(() => key('n'));
  expect(text()).toContain('Step 2 of');
  await act(() => key('r'));
  await act(() => key('b'));
  expect(text()).toContain('Step 1 of');
  expect(session.said).toHaveLength(4);
});

test('what was set up goes with the sweep it was set up for, and only once', async () => {
  const session = await walking();
  for (let step = 0; step < 30 && !text().includes('Ready for the first hold.'); step += 1) await act(() => key('n'));
  await act(() => key('n'));
  expect(screen.getByRole('heading', { name: 'New sweep' })).toBeTruthy();
  await press('Begin the sweep');
  await waitFor(() => expect(session.asked).toContain('begin with kit'));
  expect(v.is(BenchRecord, session.noted)).toBe(true);
  expect(session.noted?.ticked.length).toBeGreaterThan(12);
  await act(() => session.leave());
  await press('Begin the sweep');
  await waitFor(() => expect(session.asked).toHaveLength(2));
  expect(session.noted).toBe(null);
});

test('from a sweep that has no hold yet the walk leads back to it, with the set-up noted', async () => {
  const session = await walking(new FakeSession().open());
  for (let step = 0; step < 30 && !text().includes('Ready for the first hold.'); step += 1) await act(() => key('n'));
  await press('To the first hold');
  expect(screen.getByRole('main').dataset['screen']).toBe('sweep');
  expect(session.noted?.ticked.length).toBeGreaterThan(12);
});

test('a plan without a bench is still a plan, and one with a bench keeps every reading', () => {
  expect(v.is(Plan, PLAN)).toBe(true);
  const bench = { ticked: ['tripod'], readings: [{ reads: 'temperature', celsius: 20 }] };
  expect(v.parse(Plan, { ...PLAN, bench }).bench).toEqual(bench);
});
