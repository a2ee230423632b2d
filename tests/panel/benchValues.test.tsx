// @vitest-environment happy-dom
// Contract of what is entered at the bench: a value is read once, in the unit of that moment. Another unit writes it anew and
// leaves it as long as it was; what does not fit stays as it was typed.
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { EMPTY_KIT, newBody, newConverter, newLens, type Kit } from '../../src/kit/kit.ts';
import type { ProofRecord } from '../../src/logbook/proofRecord.ts';
import { measuredWorth } from '../../src/panel/bench/measuredWorth.ts';
import { around } from '../../src/photographs/withInterval.ts';
import { millimetres, moment } from '../../src/units.ts';
import { FakeSession } from './fakeSession.ts';
import { lookUp, show, text, toTheBench, type } from './show.tsx';

afterEach(cleanup);

const enter = (label: string, typed: string) => act(() => void type(label, typed));
const pick = (label: string, value: string) => act(() => void fireEvent.change(screen.getByLabelText(label), { target: { value } }));
const standing = (label: string): string => screen.getByLabelText<HTMLInputElement>(label).value;

async function atTheBench(kit?: Kit): Promise<void> {
  await show(new FakeSession(kit && { kit }));
  await toTheBench();
  await waitFor(() => screen.getByRole('heading', { name: 'Distance' }));
}

test('a distance typed in metres stays where it is when feet are picked, and comes back as it was', async () => {
  await atTheBench();
  await enter('Distance as measured', '4.25');
  await pick('Distances in', 'ft');
  expect(standing('Distance as measured')).toBe('13.9 ft');
  expect(text()).toContain('Yours13.9 ft');
  await pick('Distances in', 'm');
  expect(standing('Distance as measured')).toBe('4.25 m');
  expect(text()).toContain('4.25 m from the film plane, 50 focal lengths');
});

test('a distance that says its unit is the same in either, and what is typed is left as it was typed', async () => {
  await atTheBench();
  await pick('Distances in', 'ft');
  await enter('Distance as measured', '4,25 m');
  expect(standing('Distance as measured')).toBe('4,25 m');
  expect(text()).toContain('Yours13.9 ft');
});

test('a number that is a distance only in the other unit becomes one there', async () => {
  await atTheBench();
  await enter('Distance as measured', '600');
  expect(text()).toContain('Enter the distance in metres, from 0.05 to 500.');
  await pick('Distances in', 'ft');
  expect(standing('Distance as measured')).toBe('600');
  expect(text()).toContain('Yours600 ft');
});

test('a usual value that is cleared is gone, and what does not fit stays as it was typed', async () => {
  await atTheBench();
  await enter('Widest aperture', '1.8');
  await enter('Width of a photograph, pixels', '');
  expect(standing('Width of a photograph, pixels')).toBe('');
  expect(text()).toContain('Enter the widest aperture to see depth of field');
  await enter('Width of a photograph, pixels', '60');
  expect(standing('Width of a photograph, pixels')).toBe('60');
  expect(text()).toContain('Enter the width of a full-size photograph in pixels, such as 6000.');
});

const kitWith = (factor: number): Kit => ({
  ...EMPTY_KIT,
  bodies: [newBody('m2', 'Velde M2', moment(0))],
  lenses: [
    {
      ...newLens('orrin-85', 'Orrin 85 f/1.8', moment(0)),
      focal: { from: millimetres(85), to: millimetres(85) },
      widest: { from: 1.8, to: 1.8 },
      closest: millimetres(800),
    },
  ],
  converters: [newConverter('x', 'Orrin converter', factor, moment(0))],
  situations: [
    { id: 'far', changed: moment(0), retired: null, body: 'm2', lens: 'orrin-85', converter: 'x', focalLength: millimetres(85), distance: millimetres(5950) },
  ],
});

/** The step of a bracket kept there, in millimetres at the target. */
const bracketOf = (situation: string, step: number): ProofRecord => ({
  id: 'p',
  at: moment(5),
  practice: false,
  subject: { situation, body: 'Velde M2', lens: 'Orrin 85 f/1.8', focalLength: millimetres(85), distance: millimetres(5950) },
  proof: {
    is: 'bracket',
    taken: null,
    shots: [],
    reference: null,
    step: around(step, step / 10),
    centre: around(0, 1),
    scatter: 1,
    atZero: 0,
    joined: null,
  },
  crops: null,
});

test('what a bracket of the pairing measured a step to be worth stands in place of the estimate, until another rig or worth is entered', async () => {
  const { bodies, ...kit } = kitWith(1);
  const known: Kit = {
    ...kit,
    bodies: bodies.map((body) => ({ ...body, sensor: { width: millimetres(36), height: millimetres(24) } })),
    situations: kit.situations.map((one) => ({ ...one, converter: null })),
  };
  await show(new FakeSession({ kit: known, proofs: [bracketOf('far', 40)] }));
  await lookUp('Orrin 85 f/1.8');
  await toTheBench();
  await waitFor(() => screen.getByRole('heading', { name: 'Distance' }));
  // m = 0.01471 (thin lens, 85 mm at 5950 mm): 40 mm · m² = 8.65 µm, over f/1.8 times the diagonal by 1500, 51.9 µm.
  expect(standing('One step, as a share of half the depth of focus')).toBe('0.167');
  expect(text()).toContain('As a bracket with photographs measured it.');
  expect(text()).toMatch(/One step moves the focus about .* A bracket with photographs measured it\./);
  await enter('One step, as a share of half the depth of focus', '0.2');
  expect(text()).toMatch(/One step moves the focus about .* This is an estimate\./);
});

test('a bracket of another lens, of the practice camera, or without the sensor in the kit leaves the estimate', async () => {
  const { bodies, situations } = kitWith(1);
  const known: Kit = { ...kitWith(1), situations: situations.map((one) => ({ ...one, converter: null })) };
  const sized = bodies.map((body) => ({ ...body, sensor: { width: millimetres(36), height: millimetres(24) } }));
  const [body, lens] = [sized[0]!, known.lenses[0]!];
  const rig = { body, lens, converter: null, focalLength: millimetres(85) };
  expect(measuredWorth(known, [bracketOf('far', 40)], rig)).toBeCloseTo(0.1667, 3);
  expect(measuredWorth(known, [bracketOf('elsewhere', 40), { ...bracketOf('far', 40), practice: true }], rig)).toBeNull();
  expect(measuredWorth(known, [bracketOf('far', 40)], { ...rig, body: { ...body, sensor: null } })).toBeNull();
  // More than the whole of half the depth of focus is no step of any body.
  expect(measuredWorth(known, [bracketOf('far', 4000)], rig)).toBeNull();
});

test('what the kit knows is written in the unit in use', async () => {
  await atTheBench(kitWith(1.4));
  expect([standing('Widest aperture'), standing('Converter factor'), standing('Closest focus of the lens')]).toEqual(['1.8', '1.4', '0.8 m']);
  await pick('Distances in', 'ft');
  expect(standing('Closest focus of the lens')).toBe('2.62 ft');
});

test('a converter of the kit that the bench cannot reckon with is told, not passed over', async () => {
  await atTheBench(kitWith(0.7));
  expect(standing('Converter factor')).toBe('0.7');
  expect(text()).toContain('Enter the factor engraved on the converter, from 1 to 3, such as 1.4.');
  expect(text()).toContain('Enter the widest aperture to see depth of field');
});
