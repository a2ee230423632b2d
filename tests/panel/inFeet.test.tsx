// @vitest-environment happy-dom
// Contract of the fields for distances in a country that measures in feet: they say so, a bare number is in feet, and what is left as it
// stood is still as long as it was.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { countryAmong } from '../../src/country.ts';
import { EMPTY_KIT, newLens } from '../../src/kit/kit.ts';
import { millimetres, moment } from '../../src/units.ts';
import { countryInUse } from '../../src/words/countryInUse.ts';
import { typedDistances } from '../../src/panel/plan/typedDistances.ts';
import { distanceTyped } from '../../src/panel/words/distanceTyped.ts';
import { typedDistance } from '../../src/panel/words/typedLength.ts';
import { FakeSession } from './fakeSession.ts';
import { click, lookUp, partsRead, show, text, type } from './show.tsx';

beforeEach(() => {
  countryInUse.value = countryAmong(['en-US']);
});
afterEach(() => {
  cleanup();
  countryInUse.value = countryAmong([]);
});

const press = async (name: string | RegExp): Promise<void> => {
  await act(() => void click(name));
  await partsRead();
};
const enter = (label: string, value: string) => act(() => void type(label, value));
const submit = async (label: string): Promise<void> => {
  const form = screen.getByLabelText(label).closest('form');
  if (form === null) throw new Error(`“${label}” stands in no form.`);
  await act(() => void fireEvent.submit(form));
  await partsRead();
};

test('a bare number is in feet, and another unit is what it says', () => {
  expect([typedDistance('14'), typedDistance('4.25 m'), typedDistance('5\' 9"')]).toEqual([4267, 4250, 1753]);
  expect(typedDistances('8 25; 2 m')).toEqual([2438, 7620, 2000]);
  expect([1750, 4250, 4267].map((one) => distanceTyped(millimetres(one)))).toEqual(['5.74', '13.94', '14']);
});

test('the distance of a sweep is told in feet', async () => {
  const session = await show(new FakeSession({ kit: EMPTY_KIT }));
  await lookUp('Corvid 35');
  await press(/^Body:/);
  await enter('Name of the body', 'Velde M2');
  await submit('Name of the body');
  await press(/^Distance:/);
  await enter('Distance to the target, ft', 'far');
  await submit('Distance to the target, ft');
  expect(text()).toContain('Enter the distance in feet, from 0.17 to 1640.');
  await enter('Distance to the target, ft', '14');
  await submit('Distance to the target, ft');
  await press(/^New lens/);
  expect(session.kit.value.situations).toMatchObject([{ focalLength: 35, distance: 4267 }]);
});

test('the closest focus of a lens stays as long as it was until it is typed anew', async () => {
  const lens = { ...newLens('orrin-85', 'Orrin 85', moment(0)), closest: millimetres(850) };
  const session = await show(new FakeSession({ kit: { ...EMPTY_KIT, lenses: [lens] } }));
  await press('Kit');
  await press('Orrin 85');
  expect(screen.getByLabelText<HTMLInputElement>('Closest focus, ft').value).toBe('2.789');
  await enter('Serial number', '2');
  await press('Save');
  expect(session.kit.value.lenses).toMatchObject([{ serial: '2', closest: 850 }]);
  await press(/^Orrin 85/);
  await enter('Closest focus, ft', '3');
  await press('Save');
  expect(session.kit.value.lenses).toMatchObject([{ closest: 914 }]);
});
