// @vitest-environment happy-dom
// Contract of a series on the screen: the order is said beforehand, each picture says what it was and can be told otherwise, and what all of them
// show follows at once. The worker is one that knows what it would have read.
import { cleanup, fireEvent, screen, within } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { BroughtPicture, FromWorker, ToWorker } from '../../src/platform/pictures/bridge.ts';
import { failed, got } from '../../src/result.ts';
import { moment } from '../../src/units.ts';
import { seriesPicture } from '../photographs/series/seriesPictures.ts';
import { FakeSession } from './fakeSession.ts';
import { click, partsRead, show, text, type } from './show.tsx';

beforeEach(() => vi.stubGlobal('Worker', KnowingWorker));
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

/** Reads the focus error and the second off the name of a file: "7 at 3.JPG"; "none" has no target. */
class KnowingWorker extends EventTarget {
  postMessage({ file }: ToWorker): void {
    const [, error = '', second = ''] = /^(\S+) at (\d+)/.exec(file.name) ?? [];
    const read = seriesPicture(0, { error: Number(error), found: error !== 'none', camera: { taken: moment(1000 * Number(second)) } });
    const blob = new Blob();
    const brought: BroughtPicture = { frame: read.frame, camera: read.camera, reading: read.reading, small: blob, crops: [], compared: [blob, blob] };
    const answer: FromWorker = { tells: 'end', picture: error === '' ? failed('no picture') : got(brought) };
    queueMicrotask(() => this.dispatchEvent(new MessageEvent('message', { data: answer })));
  }

  terminate(): void {
    // Nothing of it goes on.
  }
}

async function photographs(use: 'Check the value entered' | 'A bracket of corrections'): Promise<void> {
  await show(new FakeSession());
  await act(() => void click('Check with photographs'));
  await partsRead();
  await act(() => void fireEvent.click(screen.getByRole('radio', { name: new RegExp(`^${use}`) })));
}

async function bring(...names: readonly string[]): Promise<void> {
  const files = names.map((name) => new File(['x'], name));
  await act(() => void fireEvent.change(screen.getByLabelText('Pictures'), { target: { files } }));
  await partsRead();
}

const card = (name: string) => within(screen.getByRole('heading', { name }).closest('li') ?? document.body);
const parts = (): (string | null)[] =>
  screen.getAllByRole('radio', { checked: true }).flatMap((radio) => (radio.closest('.part') ? [radio.getAttribute('value')] : []));
const tell = (name: string, part: string) => act(() => void fireEvent.click(card(name).getByRole('radio', { name: part })));

test('a check says its order beforehand, and sorts the pictures by when they were taken', async () => {
  await photographs('Check the value entered');
  expect(text()).toContain('Focus in live view at full magnification, and take one picture.');
  expect(text()).toContain('Go on near and far by turns');
  await bring('51 at 2.JPG', '1 at 1.JPG', '50 at 4.JPG', '49 at 3.JPG', '52 at 5.JPG');
  expect(screen.getAllByRole('heading', { level: 2, name: / at / }).map(({ textContent }) => textContent)).toEqual(
    ['1 at 1', '51 at 2', '49 at 3', '50 at 4', '52 at 5'].map((name) => `${name}.JPG`),
  );
  expect(parts()).toEqual(['live view', 'near', 'far', 'near', 'far']);
  expect(screen.getByText(/^Shifted: with the value, focus falls 50 mm/)).toBeTruthy();
});

test('the value that was typed is the one that is told, and one off the scale is refused', async () => {
  await photographs('Check the value entered');
  await bring('0 at 1.JPG', '1 at 2.JPG', '-1 at 3.JPG', '2 at 4.JPG', '0.5 at 5.JPG');
  await act(() => void type('Value to check', '3'));
  expect(screen.getByText('Confirmed: +3 is right.')).toBeTruthy();
  await act(() => void type('Value to check', '33'));
  expect(text()).toContain('Enter a correction from −20 to +20.');
});

test('a picture can be told to be something else, the ones after it go on from there, and missing live view is asked for', async () => {
  await photographs('Check the value entered');
  await bring('9 at 1.JPG', '10 at 2.JPG', '11 at 3.JPG', '10.5 at 4.JPG');
  await tell('9 at 1.JPG', 'From near');
  expect(parts()).toEqual(['near', 'far', 'near', 'far']);
  expect(text()).toContain('No picture was focused in live view');
  await tell('11 at 3.JPG', 'Leave out');
  expect(parts()).toEqual(['near', 'far', 'left out', 'far']);
  expect(text()).toContain('Not enough to tell: take 1 more shot.');
});

test('what cannot be read, has no target or is there twice says so and takes no turn; the rest goes on', async () => {
  await photographs('Check the value entered');
  await bring('0 at 1.JPG', 'none at 2.JPG', '5 at 3.JPG', '5 at 3.NEF', 'letter.txt', '6 at 4.JPG');
  expect(parts()).toEqual(['live view', 'near', 'far']);
  expect(card('5 at 3.NEF').getByText(/^The same shot is here already/)).toBeTruthy();
  expect(card('letter.txt').getByText(/finds no picture/)).toBeTruthy();
  expect(card('none at 2.JPG').getByText(/^No target was found/)).toBeTruthy();
});

test('a bracket shows its values in order, and takes another value for a picture', async () => {
  await photographs('A bracket of corrections');
  await act(() => void type('Value to check', '2'));
  const order = within(screen.getByRole('list', { name: 'Values in order' }))
    .getAllByRole('listitem')
    .map(({ textContent }) => Number(textContent?.replace('−', '-')));
  expect([...new Set(order)].toSorted((a, b) => a - b)).toEqual([-6, -2, 2, 6, 10]);
  await bring(...order.map((value, at) => `${6 * (value - 3) + (at % 2)} at ${at + 1}.JPG`));
  expect(screen.getByText(/^The pictures put the centre at \+2\.9/)).toBeTruthy();
  expect(text()).toContain('Value to enter: +3.');
  const first = card(`${6 * ((order[0] ?? 0) - 3)} at 1.JPG`);
  const chosen = (): string => first.getByLabelText<HTMLSelectElement>('Taken at').value;
  expect(chosen()).toBe(String(order[0]));
  await act(() => void fireEvent.change(first.getByLabelText('Taken at'), { target: { value: 'left out' } }));
  expect(chosen()).toBe('left out');
  expect(text()).toContain('9 shots with autofocus.');
});

test('pictures stay when they are put to another use, and what was told of them as well', async () => {
  await photographs('Check the value entered');
  await bring('0 at 1.JPG', '5 at 2.JPG', '6 at 3.JPG');
  await tell('5 at 2.JPG', 'From far');
  await act(() => void fireEvent.click(screen.getByRole('radio', { name: /^One picture/ })));
  expect(text()).toContain('3 of 3 pictures read.');
  await act(() => void fireEvent.click(screen.getByRole('radio', { name: /^Check the value/ })));
  expect(parts()).toEqual(['live view', 'far', 'near']);
});
