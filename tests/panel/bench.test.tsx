// @vitest-environment happy-dom
// Contract of the bench and its walk on the screen: what is typed stays and is reckoned at once, what does not fit is one
// sentence, and what was set up goes with the sweep it was set up for.
import { cleanup, fireEvent, screen, waitFor, within } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { countryAmong } from '../../src/country.ts';
import { BenchRecord } from '../../src/optics/setUp/reading.ts';
import { Plan } from '../../src/sweep/plan.ts';
import * as v from 'valibot';
import { EMPTY_KIT, newBody, newConverter, newLens, type Kit } from '../../src/kit/kit.ts';
import { failed } from '../../src/result.ts';
import { millimetres, moment } from '../../src/units.ts';
import { countryInUse } from '../../src/words/countryInUse.ts';
import { FakeSession, PLAN } from './fakeSession.ts';
import { click, key, phase, show, text, type, lookUp, toTheBench } from './show.tsx';

afterEach(() => {
  cleanup();
  countryInUse.value = countryAmong([]);
});

const enter = (label: string, typed: string) => act(() => void type(label, typed));
const press = (name: string | RegExp) => act(() => void click(name));

const KNOWN_KIT: Kit = {
  bodies: [{ ...newBody('m2', 'Velde M2', moment(0)), sensor: { width: millimetres(23.5), height: millimetres(15.6) }, trigger: 'rear button' }],
  lenses: [
    {
      ...newLens('orrin-85', 'Orrin 85 f/1.8', moment(0)),
      focal: { from: millimetres(85), to: millimetres(85) },
      widest: { from: 1.8, to: 1.8 },
      closest: millimetres(800),
    },
  ],
  converters: [newConverter('x14', 'Orrin 1.4\u00d7', 1.4, moment(0))],
  situations: [
    { id: 'far', changed: moment(0), retired: null, body: 'm2', lens: 'orrin-85', converter: 'x14', focalLength: millimetres(85), distance: millimetres(5950) },
  ],
};

async function atTheBench(session = new FakeSession()): Promise<FakeSession> {
  await show(session);
  if (session.sweep.value) await press('Set up the bench');
  else await toTheBench();
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
  expect(text()).toContain('4.25 m from the film plane, 50 focal lengths. This is the general-purpose distance.');
  expect(text()).toContain('Enter the widest aperture to see depth of field');
  await enter('Widest aperture', 'f/1.8');
  expect(text()).toMatch(/One step moves the focus about [\d.]+ mm at the target, \d+% of the depth behind it\. This is an estimate\./);
  expect(text()).toMatch(/square to within [\d.]+\u00b0/);
});

test.each([
  ['Widest aperture', '0', 'Enter the aperture as the lens or the camera shows it, such as 2.8. It lies between 0.7 and 128.'],
  ['Distance as measured', 'far', 'Enter the distance in metres, such as 1.75.'],
  ['Printed scale measures, mm', '9', 'Measure the scale again, in millimetres, between the outer edges of its end marks. It should be about 100.'],
])('%s “%s” is told in one sentence and stays as it was typed', async (label, typed, sentence) => {
  await atTheBench();
  await enter(label, typed);
  expect(text()).toContain(sentence);
  expect(screen.getByLabelText<HTMLInputElement>(label).value).toBe(typed);
});

test.each([
  ['0.085', '0.085 looks like metres. Enter the focal length in millimetres, here 85.'],
  ['8.5 cm', 'Enter the focal length in millimetres. 8.5 cm is 85.'],
  ['85000', 'Enter the focal length in millimetres, from 4 to 2000.'],
])('a focal length of “%s”, in the wrong unit, is told in one sentence', async (typed, sentence) => {
  await show(new FakeSession({ kit: EMPTY_KIT }));
  await toTheBench();
  await waitFor(() => screen.getByLabelText('Focal length, mm'));
  await enter('Focal length, mm', typed);
  expect(text()).toContain(sentence);
});

test('what the kit knows of body, lens and converter is there already, and what is typed goes before it', async () => {
  const session = new FakeSession({ kit: KNOWN_KIT });
  await show(session);
  await toTheBench();
  await waitFor(() => screen.getByRole('heading', { name: 'Distance' }));
  expect(screen.getByLabelText<HTMLInputElement>('Widest aperture').value).toBe('1.8');
  expect(text()).toContain('With the converter the aperture is f/2.5.');
  expect(text()).toContain('23.5 × 15.6 mm');
  expect(text()).toContain('5.95 m from the film plane, 50 focal lengths');
  await enter('Widest aperture', '2.8');
  expect(text()).toContain('With the converter the aperture is f/3.9.');
  expect(screen.getByLabelText<HTMLInputElement>('Focus by a rear button').checked).toBe(true);
});

test('from the front of the lens the walk asks for the distance as it is measured there', async () => {
  await atTheBench();
  await enter('Widest aperture', '1.8');
  await act(() => void fireEvent.change(screen.getByLabelText('Measured from'), { target: { value: 'front of lens' } }));
  expect(text()).toContain('Enter how far the front of the lens is from the film-plane mark');
  await enter('Film-plane mark to front of lens, mm', '150');
  await enter('Distance as measured', '4.1');
  expect(text()).toContain('4.25 m from the film plane, 50 focal lengths');
  await press('Walk through the set-up');
  await waitFor(() => screen.getByText(/^Step 1 of/));
  for (let step = 0; step < 12 && !text().includes('Put the target'); step += 1) await act(() => key('n'));
  expect(text()).toContain('Put the target 4.1 m from the front of the lens');
});

test('a returning spot tells the tilt and what it costs, and brings the caution for lasers', async () => {
  await atTheBench();
  await enter('Widest aperture', '1.8');
  await act(() => void fireEvent.change(screen.getByLabelText('Checked by'), { target: { value: 'spot' } }));
  expect(text()).toContain('class 1 or 2 (IEC 60825-1)');
  await enter('Spot off its source, mm', '300');
  expect(text()).toMatch(/Tilted 2\.0\d°, about [\d.]+ steps at the edge of the AF area/);
  await enter('Spot off its source, mm', '-3');
  expect(text()).toContain('Enter how far from its source the spot comes back, in millimetres, or 0 if it meets its source.');
});

test('the ramp’s line is said as millimetres, share of the depth and steps, through its lean', async () => {
  await atTheBench();
  await enter('Widest aperture', '1.8');
  await enter('Number at the sharpest line of the ramp', '-20');
  expect(text()).toMatch(/Focus lies 20 mm in front of the target, \d+% of the depth of field on that side, about [\d.]+ steps\. This is an estimate\./);
  await enter('Length of the ramp, mm', '200');
  await enter('Upper end of the ramp set back by, mm', '100');
  expect(text()).toContain('Focus lies 14.1 mm in front of the target');
  await enter('Upper end of the ramp set back by, mm', '300');
  expect(text()).toContain('Enter how far the upper end of the ramp stands behind its lower end. It is more than 0');
});

test('a share of the depth in front is kept with the sweep, and a share that cannot be is asked again', async () => {
  const session = await atTheBench();
  await enter('Widest aperture', '1.8');
  await enter('Share of the depth in front, %', '133');
  expect(text()).toContain('Enter the share of the depth of field in front of the subject, from 0 to 100%.');
  await enter('Share of the depth in front, %', '33');
  expect(text()).toMatch(/With focus on the subject, 4\d% lies in front\. The value found by the sweep will be shifted/);
  await press('Walk through the set-up');
  await waitFor(() => screen.getByText(/^Step 1 of/));
  for (let step = 0; step < 30 && !text().includes('Ready for the first hold.'); step += 1) await act(() => key('n'));
  expect(text()).toContain('share of the depth in front: 33%');
  await act(() => key('n'));
  await waitFor(() => expect(session.noted?.readings).toContainEqual({ reads: 'placement', share: 0.33 }));
});

test('what is read at the bench goes with the sweep although nobody walks through the set-up, once and as it stands at last', async () => {
  const session = await atTheBench();
  for (const [label, typed] of [
    ['ISO', '400'],
    ['Aperture', '1.8'],
    ['Shutter', '1/125'],
    ['Share of the depth in front, %', '33'],
  ] as const)
    await enter(label, typed);
  await press('Back');
  await toTheBench();
  await waitFor(() => screen.getByRole('heading', { name: 'Distance' }));
  await enter('ISO', '800');
  await press('Back');
  await press('Start');
  await waitFor(() => expect(session.noted?.readings.map((reading) => (reading as { reads: string }).reads)).toEqual(['light', 'placement', 'light']));
  expect(session.noted?.readings.at(-1)).toMatchObject({ iso: 800 });
});

test('a shutter that cuts the lamps’ flicker short is cautioned', async () => {
  await atTheBench();
  await enter('ISO', '100');
  await enter('Aperture', '2.8');
  await enter('Shutter', '1/500');
  await act(() => void fireEvent.change(screen.getByLabelText('Light from'), { target: { value: 'mains lamp' } }));
  expect(text()).toContain('Use 1/100 s or a whole multiple of it');
});

test('a print at 96 % may be kept or made anew, and a target nearer than the lens can focus is refused', async () => {
  await atTheBench();
  await enter('Printed scale measures, mm', '96');
  expect(text()).toContain('The print came out at 96%. Print it again at 100%, not fitted to the page. Or keep it');
  await enter('Closest focus of the lens', '5');
  expect(text()).toContain('4.25 m is nearer than this lens can focus. Put the target at 5 m or farther');
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
  await toTheBench();
  await waitFor(() => screen.getByRole('heading', { name: 'Distance' }));
  expect(screen.getByLabelText<HTMLInputElement>('Widest aperture').value).toBe('2.8');
});

test('another lens begins with empty readings; what belongs to the room and the body stays', async () => {
  const other = { ...newLens('orrin-35', 'Orrin 35 f/2', moment(0)), focal: { from: millimetres(35), to: millimetres(35) }, widest: { from: 2, to: 2 } };
  const far = { ...KNOWN_KIT.situations[0]!, converter: null, distance: millimetres(4250) };
  const near = { ...far, id: 'near', lens: 'orrin-35', focalLength: millimetres(35), distance: millimetres(1750) };
  await show(new FakeSession({ kit: { ...KNOWN_KIT, lenses: [...KNOWN_KIT.lenses, other], situations: [far, near] } }));
  const at = async (lens: string) => {
    await lookUp(lens);
    await press(new RegExp(`${lens}.*\\smm at`));
    await toTheBench();
    await waitFor(() => screen.getByRole('heading', { name: 'Distance' }));
  };
  await at('Orrin 85');
  const readings = ['Distance as measured', 'ISO', 'Share of the depth in front, %'];
  await Promise.all(readings.map((label, index) => enter(label, ['4.2', '400', '33'][index]!)));
  await enter('Enough from, EV at ISO 100', '6');
  await press('Back');
  await at('Orrin 85');
  expect(readings.map((label) => screen.getByLabelText<HTMLInputElement>(label).value)).toEqual(['4.2', '400', '33']);
  await press('Back');
  await at('Orrin 35');
  expect(readings.map((label) => screen.getByLabelText<HTMLInputElement>(label).value)).toEqual(['', '', '']);
  expect(screen.getByLabelText<HTMLInputElement>('Enough from, EV at ISO 100').value).toBe('6');
  expect(text()).toContain('Yours1.75 m');
});

test('until a person chooses, unit and paper are those of their country', async () => {
  countryInUse.value = countryAmong(['en-US']);
  const session = await atTheBench();
  expect(text()).toContain('13.9 ft from the film plane, 50 focal lengths.');
  await enter('Widest aperture', '1.8');
  await press('Open the page to print');
  expect(session.asked.join()).toContain(encodeURIComponent('"paper":"Letter"'));
  await act(() => void fireEvent.change(screen.getByLabelText('Distances in'), { target: { value: 'm' } }));
  expect(text()).toContain('4.25 m from the film plane, 50 focal lengths.');
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
  expect(text()).toContain('Enter the correction as a whole number');
  await enter('Correction stored now', '-3');
  await press('Keep this reading');
  expect(text()).toContain('Kept. Correction stored before: \u22123.');
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
  // Once more by mistake, before the sweep is there.
  await act(() => (key('n'), key('n')));
  await waitFor(() => expect(screen.getByRole('main').dataset['screen']).toBe('sweep'));
  expect(phase()).toBe('dialling');
  expect(session.asked).toEqual(['begin with told']);
  expect(v.is(BenchRecord, session.noted)).toBe(true);
  expect(session.noted?.ticked.length).toBeGreaterThan(12);
  await act(() => session.leave());
  await press('Start');
  await waitFor(() => expect(session.asked).toHaveLength(2));
  expect(session.noted).toBe(null);
});

test('a sweep that cannot be begun at the end of the walk is told there, and nothing that was set up is lost', async () => {
  const session = await walking();
  for (let step = 0; step < 30 && !text().includes('Ready for the first hold.'); step += 1) await act(() => key('n'));
  const { begin } = session;
  session.begin = async () => failed('The disk is full.');
  await act(() => key('n'));
  await waitFor(() => expect(screen.getByRole('alert').textContent).toBe('The disk is full.'));
  expect(screen.getByRole('main').dataset['screen']).toBe('walk');
  session.begin = begin;
  await act(() => key('n'));
  await waitFor(() => expect(session.noted?.ticked.length).toBeGreaterThan(12));
});

test('every step of the walk has a drawing that is said in words, and the end the button that the holds are taken with', async () => {
  await walking();
  const drawings: string[] = [];
  const drawn = (): string =>
    within(screen.getByRole('region', { name: /^Step$|^Set up$/ }))
      .getByRole('img')
      .getAttribute('aria-label') ?? '';
  for (let step = 0; step < 30 && !text().includes('Ready for the first hold.'); step += 1) {
    drawings.push(drawn());
    await act(() => key('n'));
  }
  expect(new Set(drawings).size).toBe(drawings.length);
  expect(drawings.every((said) => /^Drawn: .+\.$/.test(said))).toBe(true);
  expect(drawn()).toBe('Drawn: a finger holding the button half down, and the focus light on.');
  // One button leads on: the switch, as in every step before.
  expect(screen.getAllByRole('button', { name: /first hold/ })).toHaveLength(1);
});

test('from a sweep that has no hold yet the walk leads back to it, with the set-up noted', async () => {
  const session = await walking(new FakeSession().open());
  for (let step = 0; step < 30 && !text().includes('Ready for the first hold.'); step += 1) await act(() => key('n'));
  await act(() => key('n'));
  expect(screen.getByRole('main').dataset['screen']).toBe('sweep');
  expect(session.noted?.ticked.length).toBeGreaterThan(12);
});

test('a plan without a bench is still a plan, and one with a bench keeps every reading', () => {
  expect(v.is(Plan, PLAN)).toBe(true);
  const bench = { ticked: ['tripod'], readings: [{ reads: 'temperature', celsius: 20 }] };
  expect(v.parse(Plan, { ...PLAN, bench }).bench).toEqual(bench);
});
