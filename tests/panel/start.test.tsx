// @vitest-environment happy-dom
// Contract of the start: a sweep begins in a few moves, what does not fit is said beside its field, and nothing typed is lost.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test } from 'vitest';
import { EMPTY_KIT, newBody, newConverter, newLens } from '../../src/kit/kit.ts';
import { millimetres, moment } from '../../src/units.ts';
import { FakeSession, KIT } from './fakeSession.ts';
import { click, partsRead, show, text, type } from './show.tsx';

afterEach(cleanup);

const typed = (label: string): string => (screen.getByLabelText(label) as HTMLInputElement).value;
const faultOf = (label: string): string | undefined => {
  const ids = screen.getByLabelText(label).getAttribute('aria-describedby')?.split(' ') ?? [];
  return ids.map((id) => document.querySelector(`[id="${id}"]`)?.textContent).at(-1) ?? undefined;
};
const enter = (label: string, value: string) => act(() => void type(label, value));
const begin = async (): Promise<void> => {
  await act(() => void click('Begin the sweep'));
  await partsRead();
};

describe('with an empty kit', () => {
  const empty = () => show(new FakeSession({ kit: EMPTY_KIT }));

  test('the practice camera comes first', async () => {
    const session = await empty();
    const headings = screen.getAllByRole('heading', { level: 2 }).map(({ textContent }) => textContent);
    expect(headings).toEqual(['New here? Practise first', 'New sweep']);
    await act(() => void click('Practise'));
    expect(session.asked).toEqual(['begin with practice, absent']);
  });

  test('practice may be with arrows', async () => {
    const session = await empty();
    await act(() => void fireEvent.click(screen.getByLabelText(/With arrows/)));
    await act(() => void click('Practise'));
    expect(session.asked).toEqual(['begin with practice, right-is-up']);
  });

  test('names, scale, focal length and distance are enough to begin', async () => {
    const session = await empty();
    await enter('Body', 'Velde M2');
    await enter('Lens', 'Orrin 35 f/2');
    await enter('Focal length, mm', '35');
    await begin();
    expect(session.kit.value.bodies).toMatchObject([{ name: 'Velde M2', scale: { min: -20, max: 20, step: 1 }, arrows: 'absent' }]);
    expect(session.kit.value.situations).toMatchObject([{ focalLength: 35, distance: 1750 }]);
    expect(session.asked).toEqual(['begin with kit']);
  });

  test('the distance follows the focal length, fifty of it, until one is typed', async () => {
    await empty();
    await enter('Focal length, mm', '85');
    expect(typed('Distance to the target, m')).toBe('4.25');
    await enter('Distance to the target, m', '6');
    await enter('Focal length, mm', '35');
    expect(typed('Distance to the target, m')).toBe('6');
  });

  test('every field that does not fit says so in a sentence, the first takes the focus, and what was typed stays', async () => {
    await empty();
    await enter('From', 'twenty');
    await enter('Focal length, mm', '8500');
    await begin();
    expect(faultOf('Body')).toBe('Give it a name you will recognise.');
    expect(faultOf('From')).toMatch(/^Enter the lowest correction/);
    expect(faultOf('Lens')).toBe('Give it a name you will recognise.');
    expect(faultOf('Focal length, mm')).toBe('Enter the focal length in millimetres, from 4 to 2000.');
    expect(document.activeElement).toBe(screen.getByLabelText('Body'));
    expect(typed('From')).toBe('twenty');
    expect(typed('Focal length, mm')).toBe('8500');
  });

  test('a scale that its step does not divide is refused beside the scale', async () => {
    await empty();
    await enter('step', '7');
    await begin();
    expect(text()).toContain('The step must divide the range evenly.');
  });

  test('what was kept before a fault is not kept twice', async () => {
    const session = await empty();
    await enter('Body', 'Velde M2');
    await begin();
    await enter('Lens', 'Orrin 35 f/2');
    await enter('Focal length, mm', '35');
    await begin();
    expect(session.kit.value.bodies).toHaveLength(1);
    expect(session.asked).toEqual(['begin with kit']);
  });

  test('a look at the help loses nothing that was typed', async () => {
    await empty();
    await enter('Body', 'Velde M2');
    await act(() => void click('Help'));
    await partsRead();
    expect(screen.queryByLabelText('Body')).toBeNull();
    await act(() => void click('Back'));
    expect(typed('Body')).toBe('Velde M2');
  });

  test('a decimal comma is welcome', async () => {
    const session = await empty();
    await enter('Body', 'Velde M2');
    await enter('Lens', 'Orrin 35 f/2');
    await enter('Focal length, mm', '35');
    await enter('Distance to the target, m', '2,5');
    await begin();
    expect(session.kit.value.situations).toMatchObject([{ distance: 2500 }]);
  });
});

describe('with a kit', () => {
  test('what was measured last is picked already, with its last value in sight, so that one press begins', async () => {
    const measured = new FakeSession().open().hold('dark', 0).hold('steady', 6);
    measured.input({ told: 'finish', by: 'key', heard: null });
    const session = await show(new FakeSession({ records: [measured.asRecord('one')] }));
    expect(screen.getByRole('radio', { name: /85 mm at 4.25 m.*last [+\u2212]?\d+/ })).toHaveProperty('checked', true);
    await begin();
    expect(session.asked).toEqual(['begin with kit']);
  });

  test('another body or lens can be added', async () => {
    const session = await show(new FakeSession());
    await act(() => void fireEvent.change(screen.getByLabelText('Lens'), { target: { value: 'new' } }));
    await enter('Name of the new lens', 'Orrin 200 f/4');
    await enter('Focal length, mm', '200');
    await begin();
    expect(session.kit.value.lenses.map(({ name }) => name)).toEqual([KIT.lenses[0]?.name, 'Orrin 200 f/4']);
    expect(session.kit.value.situations.at(-1)).toMatchObject({ focalLength: 200, distance: 10_000 });
  });

  test('a converter of the kit is measured with the lens as a situation of its own', async () => {
    const session = new FakeSession({ kit: { ...KIT, converters: [newConverter('c', 'Orrin 1.4×', 1.4, moment(0))] } });
    await show(session);
    expect(typed('Converter')).toBe('bare');
    await act(() => void fireEvent.change(screen.getByLabelText('Converter'), { target: { value: 'c' } }));
    await enter('Focal length, mm', '85');
    expect(typed('Distance to the target, m')).toBe('5.95');
    await begin();
    expect(session.kit.value.situations.at(-1)).toMatchObject({ lens: 'orrin-85', converter: 'c', focalLength: 85, distance: 5950 });
    expect(session.kit.value.situations).toHaveLength(2);
  });

  test('what was put away is not offered', async () => {
    const away = { ...newBody('m0', 'Velde M0', moment(0)), retired: moment(1) };
    await show(new FakeSession({ kit: { ...KIT, bodies: [away, ...KIT.bodies] } }));
    expect(screen.queryByRole('option', { name: 'Velde M0' })).toBeNull();
    expect(typed('Body')).toBe('m1');
  });

  test('care and way of working say what they cost', async () => {
    const session = await show(new FakeSession());
    await act(() => void fireEvent(screen.getByText(/^Care:/), new Event('toggle', { bubbles: true })));
    await partsRead();
    await act(() => void fireEvent.click(screen.getByRole('radio', { name: /^Thorough.*holds/ })));
    expect(session.settings.value.manner.care).toBe('thorough');
    expect(text()).toContain('Care: thorough, fewest holds');
    await act(() => void fireEvent.click(screen.getByRole('radio', { name: /^Step by step/ })));
    expect(session.settings.value.manner.order).toBe('outward');
  });
});

test('a sweep that another window runs does not push itself forward, and can be followed', async () => {
  const session = new FakeSession().open().hold('dark', 0);
  session.role.value = 'follower';
  await show(session);
  expect(text()).toContain('A sweep runs in another window');
  await act(() => void click('Follow it'));
  expect(screen.getByLabelText('Value to set')).toBeTruthy();
});

test('a lens of one focal length brings it; a zoom waits for the end, and what was typed for one is not left to the other', async () => {
  const at = (from: number, to: number) => ({ from: millimetres(from), to: millimetres(to) });
  const lenses = [
    { ...newLens('one', 'Orrin 35 f/2', moment(0)), focal: at(35, 35) },
    { ...newLens('zoom', 'Orrin 24-70 f/4', moment(0)), focal: at(24, 70) },
  ];
  await show(new FakeSession({ kit: { ...KIT, lenses, situations: [] } }));
  expect(typed('Focal length, mm')).toBe('35');
  expect(typed('Distance to the target, m')).toBe('1.75');
  await act(() => void fireEvent.change(screen.getByLabelText('Lens'), { target: { value: 'zoom' } }));
  expect(typed('Focal length, mm')).toBe('');
  await enter('Focal length, mm', '24');
  await act(() => void fireEvent.change(screen.getByLabelText('Lens'), { target: { value: 'one' } }));
  expect(typed('Focal length, mm')).toBe('35');
});
