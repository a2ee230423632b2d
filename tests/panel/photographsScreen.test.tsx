// @vitest-environment happy-dom
// Contract of a series on the screen: the order is said beforehand, each picture says what it was and can be told otherwise, and what all of them
// show follows at once. The worker is one that knows what it would have read.
import { cleanup, fireEvent, screen, within } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { ProofRecord } from '../../src/logbook/proofRecord.ts';
import { around } from '../../src/photographs/withInterval.ts';
import type { BroughtPicture, FromWorker, ToWorker } from '../../src/platform/pictures/bridge.ts';
import { failed, got } from '../../src/result.ts';
import { millimetres, moment } from '../../src/units.ts';
import { newPrintedScale, printMeasured } from '../../src/panel/photographs/printedScale.tsx';
import { libraryWith, sweepRecord } from '../logbook/libraryWith.ts';
import { seriesPicture } from '../photographs/series/seriesPictures.ts';
import { FakeSession, SUBJECT } from './fakeSession.ts';
import { click, partsRead, show, text, type } from './show.tsx';

beforeEach(() => vi.stubGlobal('Worker', KnowingWorker));
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const factors: number[] = [];

/** Reads the focus error, the second and the focal length off the name of a file: "7 at 3.JPG", "7 at 3 of 50.JPG"; "none" has no target. */
class KnowingWorker extends EventTarget {
  postMessage({ file, printed }: ToWorker): void {
    factors.push(printed);
    const [, error = '', second = '', length = '85'] = /^(\S+) at (\d+)(?: of (\d+))?/.exec(file.name) ?? [];
    const read = seriesPicture(0, {
      error: Number(error),
      found: error !== 'none',
      camera: { taken: moment(1000 * Number(second)), focalLength: millimetres(Number(length)) },
    });
    const blob = new Blob([file.name]);
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

/** Opened from the page of the situation they are of. */
async function photographsOfSituation(use: string, session = new FakeSession()): Promise<FakeSession> {
  await show(session);
  await act(() => void click('Logbook'));
  await partsRead();
  await act(() => void click(/Orrin 85/));
  await partsRead();
  await act(() => void click('Check it with photographs'));
  await partsRead();
  await act(() => void fireEvent.click(screen.getByRole('radio', { name: new RegExp(`^${use}`) })));
  return session;
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

test('of many pictures the first are drawn, all are read, and the rest are drawn when they are wanted', { timeout: 30_000 }, async () => {
  await photographs('Check the value entered');
  await bring(...Array.from({ length: 45 }, (_, place) => `${place % 3} at ${place + 1}.JPG`));
  expect(text()).toContain('45 of 45 pictures read.');
  expect(text()).toContain('44 shots with autofocus.');
  const cards = () => document.querySelectorAll('.pictures > li');
  expect(cards()).toHaveLength(40);
  await act(() => void click('Show more of 45'));
  expect(cards()).toHaveLength(45);
});

test('the length that the printed scale measures counts for pictures brought in from then on, and one that it cannot have is refused', async () => {
  await photographs('Check the value entered');
  factors.length = 0;
  await bring('0 at 1.JPG');
  await act(() => void type('Printed scale measures, mm', '94'));
  await bring('1 at 2.JPG');
  await act(() => void type('Printed scale measures, mm', '9'));
  expect(text()).toContain('Enter the length of the printed scale in millimetres, from 50 to 200, such as 94.');
  await bring('2 at 3.JPG');
  await act(() => void type('Printed scale measures, mm', ''));
  await bring('3 at 4.JPG');
  expect(factors).toEqual([1, 0.94, 0.94, 1]);
});

test('what the scale measured when the rig of the situation was last set up stands there', () => {
  const bench = (measured: number) => ({ ticked: [], readings: [{ reads: 'print', drawn: 100, measured }] });
  const record = (id: string, finished: number, of: object, more = {}) => {
    const { journal, ...rest } = sweepRecord(id, finished, 0, 8, more) as { journal: { plan: object }[] };
    return { ...rest, journal: journal.map((opened) => ({ ...opened, plan: { ...opened.plan, ...of } })) };
  };
  const { records } = libraryWith({
    records: [
      record('new', 3, { bench: bench(94) }),
      record('old', 1, { bench: bench(97) }),
      record('bare', 4, {}),
      record('practice', 5, { bench: bench(80) }, { practice: true }),
    ],
  });
  expect(printMeasured(records, 's')).toBe(94);
  expect(printMeasured(records, 'another')).toBeNull();
  expect(printMeasured(records, null)).toBeNull();
  expect(newPrintedScale(printMeasured(records, 's')).factor()).toBeCloseTo(0.94, 9);
});

const keep = () => act(async () => void click('Keep in the logbook'));

test('a bracket is kept once, however often it is pressed, with the crops of live view and of the shot nearest to it; and it can be erased again', async () => {
  const session = await photographsOfSituation('A bracket of corrections');
  await bring('0 at 1.JPG', '-24 at 2.JPG', '12 at 3.JPG', '-1 at 4.JPG', '24 at 5.JPG', '-12 at 6.JPG');
  const button = screen.getByRole('button', { name: 'Keep in the logbook' });
  await act(async () => {
    fireEvent.click(button);
    fireEvent.click(button);
  });
  await partsRead();
  expect(text()).toContain('It is in the history of this situation.');
  await act(() => void click('Kept in the logbook'));
  expect(session.proofs.value).toMatchObject([{ practice: false, subject: { situation: 'orrin-85-near' }, proof: { is: 'bracket', taken: 1000 } }]);
  const [crops] = session.crops.values();
  expect([session.crops.size, await crops?.reference?.text(), await crops?.shot?.text()]).toEqual([1, '0 at 1.JPG', '-1 at 4.JPG']);
  await act(() => void click('Erase it again'));
  await partsRead();
  expect(session.proofs.value).toEqual([]);
  expect(document.activeElement?.textContent).toBe('Keep in the logbook');
});

test('a check is kept with the value that was checked; until that is told, it is asked for', async () => {
  const session = await photographsOfSituation('Check the value entered');
  await bring('0 at 1.JPG', '1 at 2.JPG', '-1 at 3.JPG', '2 at 4.JPG', '0.5 at 5.JPG');
  expect(text()).toContain('To keep this, enter the value to check above.');
  expect(screen.queryByRole('button', { name: 'Keep in the logbook' })).toBeNull();
  await act(() => void type('Value to check', '3'));
  await keep();
  await act(() => void type('Value to check', '4'));
  await keep();
  expect(session.proofs.value.map(({ proof }) => proof.is === 'check' && proof.correction)).toEqual([3, 4]);
});

test('each picture is kept on its own, and one that was taken with another lens than the situation has is not', async () => {
  const session = await photographsOfSituation('One picture at a time');
  await bring('5 at 1.JPG', '6 at 2.JPG', 'none at 3.JPG', '5 at 4 of 50.JPG');
  const buttons = screen.getAllByRole('button', { name: 'Keep in the logbook' });
  expect(buttons).toHaveLength(2);
  await act(() => void fireEvent.click(buttons[1]!));
  expect(session.proofs.value).toMatchObject([{ proof: { is: 'one', taken: 2000, error: { value: 6 } } }]);
  expect(card('5 at 4 of 50.JPG').getByText(/^This picture was taken with another body, lens or focal length/)).toBeTruthy();
});

test('without a situation nothing is kept, and it is said where to begin', async () => {
  await photographs('Check the value entered');
  await bring('0 at 1.JPG', '1 at 2.JPG', '-1 at 3.JPG', '2 at 4.JPG', '0.5 at 5.JPG');
  await act(() => void type('Value to check', '3'));
  expect(text()).toContain('To keep this, open the logbook, choose the situation, and bring the pictures in from there.');
  expect(screen.queryByRole('button', { name: 'Keep in the logbook' })).toBeNull();
});

const BRACKET: ProofRecord = {
  id: 'kept',
  at: moment(0),
  practice: false,
  subject: SUBJECT,
  proof: {
    is: 'bracket',
    taken: null,
    shots: [],
    reference: null,
    step: around(10, 1),
    centre: around(0, 1),
    scatter: 1,
    atZero: 0,
    joined: null,
  },
  crops: null,
};

test('what a kept bracket measured a step to be worth counts for the situation from then on', async () => {
  await photographsOfSituation('Check the value entered', new FakeSession({ proofs: [BRACKET] }));
  await act(() => void type('Value to check', '3'));
  await bring('0 at 1.JPG', '51 at 2.JPG', '49 at 3.JPG', '50 at 4.JPG', '50 at 5.JPG');
  expect(text()).toContain('About −5 steps would undo it, by what a bracket measured a step to be worth: try −2, and check again.');
});
