// @vitest-environment happy-dom
// Contract of the bench at a glance: three fields, the way into the walk, the rig drawn with its five answers; everything else is one press
// behind, what does not fit is told where it is seen, and what tells nothing is left out.
import { cleanup, fireEvent, screen, waitFor } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { EMPTY_KIT } from '../../src/kit/kit.ts';
import { FakeSession } from './fakeSession.ts';
import { click, show, text, toTheBench, type } from './show.tsx';

afterEach(cleanup);

const enter = (label: string, typed: string) => act(() => void type(label, typed));
const pick = (label: string, value: string) => act(() => void fireEvent.change(screen.getByLabelText(label), { target: { value } }));
const drawing = (): string =>
  screen
    .getByRole('img', { name: /^The rig as drawn\./ })
    .getAttribute('aria-label')
    ?.replaceAll('\u00a0', ' ') ?? '';
const room = (title: string): HTMLDetailsElement => screen.getByRole('heading', { name: title }).closest('details')!;

async function atTheBench(session = new FakeSession()): Promise<void> {
  await show(session);
  await toTheBench();
  await waitFor(() => screen.getByLabelText(session.kit.value.lenses.length > 0 ? 'Widest aperture' : 'Focal length, mm'));
}

/** One whose lengths are not in the kit yet. */
async function withNewLens(): Promise<void> {
  await atTheBench(new FakeSession({ kit: EMPTY_KIT }));
  await enter('Focal length, mm', '85');
}

test('the drawing stands there with the distance at once, and with all five answers as soon as the aperture is known', async () => {
  await atTheBench();
  expect(drawing()).toBe('The rig as drawn. 4.25 m, 50 focal lengths.');
  await enter('Widest aperture', '1.8');
  expect(drawing()).toMatch(
    /^The rig as drawn\. 4\.25 m, 50 focal lengths\. Light: EV 7 or more\. Square to within [\d.]+°\. Field \d+ mm, one sheet\. Sharp \d+ mm in front, \d+ mm behind\.$/,
  );
});

test('the drawing follows what is entered: distance, light and tilt', async () => {
  await atTheBench();
  await enter('Widest aperture', '1.8');
  await enter('Distance as measured', '2.5');
  expect(drawing()).toContain('2.5 m, 29 focal lengths.');
  for (const [label, typed] of [
    ['ISO', '100'],
    ['Aperture', '2.8'],
    ['Shutter', '1/8'],
  ] as const)
    await enter(label, typed);
  expect(drawing()).toContain('Light: EV 6, too dim.');
  await enter('Reflection off the middle, pixels', '90');
  expect(drawing()).toMatch(/Tilted 0\.3\d° of at most [\d.]+°\./);
});

test('every room is closed until it is opened, and one in which something is marked opens by itself', async () => {
  await atTheBench();
  const titles = ['Distance', 'Lens and depth of field', 'Target', 'Light', 'Squareness', 'Ramp, and depth on purpose', 'Set-up walk'];
  expect(titles.filter((title) => room(title).open)).toEqual([]);
  await pick('Measured from', 'front of lens');
  expect(room('Distance').open).toBe(true);
  await enter('Film-plane mark to front of lens, mm', '150');
  expect(room('Distance').open).toBe(true);
});

test('a rig that cannot be is told beside the drawing, not in a closed room', async () => {
  await atTheBench();
  await enter('Closest focus of the lens', '5');
  const told = screen.getByText(/^4\.25 m is nearer than this lens can focus\./);
  expect(told.closest('details')).toBe(null);
});

test('a distance that was measured can become that of the sweep, and 50 focal lengths are one press away', async () => {
  await withNewLens();
  expect(screen.queryByRole('button', { name: 'Use 50 focal lengths' })).toBe(null);
  await enter('Distance as measured', '2.5');
  await act(() => void click('Use 2.5\u00a0m for the sweep'));
  expect(screen.queryByRole('button', { name: /for the sweep$/ })).toBe(null);
  expect(drawing()).toContain('2.5 m, 29 focal lengths.');
  await act(() => void click('Use 50 focal lengths'));
  expect(screen.getByLabelText<HTMLInputElement>('Distance as measured').value).toBe('');
  expect(drawing()).toContain('4.25 m, 50 focal lengths.');
});

test('how far off a reflection or a spot may be is said for the way that is picked, and only where it could be seen', async () => {
  await atTheBench();
  await enter('Widest aperture', '1.8');
  expect(text()).toMatch(/In the mirror, the lens may see itself \d[\d,]* pixels off the middle\./);
  await pick('Checked by', 'spot');
  // More than a metre, from a target of a few hand's breadths: nobody could miss by that.
  expect(text()).not.toContain('may miss its source');
  expect(text()).not.toContain('may see itself');
  await enter('AF area on the sensor, mm', '25');
  expect(text()).toMatch(/square to within [\d.]+\u00b0/);
  expect(text()).toMatch(/A returning spot may miss its source by \d+ mm\./);
});

test('where no tilt that matters could be missed, its figure is left out', async () => {
  await atTheBench();
  await enter('Widest aperture', '8');
  expect(drawing()).toContain('Square by eye.');
  expect(text()).toContain('Here it is enough to set the target square by eye.');
  expect(text()).not.toMatch(/square to within|may see itself/i);
  await enter('Reflection off the middle, pixels', '90');
  expect(drawing()).toMatch(/Tilted 0\.3\d° of at most \d+°\./);
});
