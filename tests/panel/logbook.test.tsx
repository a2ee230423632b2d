// @vitest-environment happy-dom
// Contract of the logbook on screen: a lens's last value is found while one types, and a record opens with its holds.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test, vi } from 'vitest';
import { EMPTY_KIT } from '../../src/kit/kit.ts';
import type { LogRecord } from '../../src/logbook/record.ts';
import { moment } from '../../src/units.ts';
import { FakeSession } from './fakeSession.ts';
import { click, partsRead, show, text } from './show.tsx';

afterEach(cleanup);

function record(id: string, lens: string, situation: string, day: number, practice = false): LogRecord {
  const session = new FakeSession().open().hold('dark', 0).hold('steady', 6);
  session.input({ told: 'finish', by: 'key', heard: null });
  const kept = session.asRecord(id);
  return { ...kept, practice, finished: moment(kept.finished + day * 86_400_000), subject: { ...kept.subject, lens, situation } };
}

const RECORDS = [
  record('new', 'Orrin 85 f/1.8', 'near', 9),
  record('old', 'Orrin 85 f/1.8', 'near', 1),
  record('wide', 'Orrin 35 f/2', 'wide', 5),
  record('played', 'Practice lens', 'practice', 7, true),
];

async function logbook(records: readonly LogRecord[] = RECORDS): Promise<FakeSession> {
  const session = await show(new FakeSession({ records }));
  await act(() => void click('Logbook'));
  await partsRead();
  return session;
}
const search = (query: string) => act(() => void fireEvent.input(screen.getByRole('searchbox'), { target: { value: query } }));
const entries = (): (string | null)[] => screen.queryAllByRole('button', { name: /Orrin/ }).map(({ textContent }) => textContent);

test('the value of each situation is listed, newest first, what was never measured last, practice apart', async () => {
  await logbook();
  expect(entries()).toEqual([expect.stringContaining('Orrin 85 f/1.8'), expect.stringContaining('Orrin 35 f/2'), expect.stringContaining('never measured')]);
  expect(text()).toContain('Practice sweeps (1)');
});

test('typing narrows the list at each letter, and the value is in the entry', async () => {
  await logbook();
  await search('35');
  expect(entries()).toEqual([expect.stringMatching(/^[+\u2212]?\d+Orrin 35 f\/2/)]);
  expect(screen.getByLabelText('Found').textContent).toBe('1 found');
});

test('nothing found is said, with what was looked for', async () => {
  await logbook();
  await search('zzz');
  expect(entries()).toEqual([]);
  expect(text()).toContain('Nothing in the logbook fits \u201czzz\u201d');
});

test('an empty logbook says in a sentence and a drawing what will be in it, and its one chief button leads to the start', async () => {
  await show(new FakeSession({ kit: EMPTY_KIT }));
  await act(() => void click('Logbook'));
  await partsRead();
  expect(text()).toContain('Once a sweep is finished, its lens stands here with the value to enter, the band and the centre.');
  expect(screen.getByRole('img', { name: /^Drawing: two lenses/ })).toBeTruthy();
  expect(document.querySelectorAll('button.chief')).toHaveLength(1);
  await act(() => void click('Begin with a lens'));
  await partsRead();
  expect(screen.getByRole('button', { name: 'Start' })).toBeTruthy();
});

test('a sweep opens from its situation with its outcome and every hold, and back leads to the list', async () => {
  await logbook();
  await act(() => void fireEvent.click(screen.getAllByRole('button', { name: /Orrin 85/ })[0] ?? document.body));
  await partsRead();
  await act(() => void fireEvent.click(screen.getAllByRole('button', { name: 'See every hold, or add a note' })[0] ?? document.body));
  await partsRead();
  expect(screen.getByLabelText('Value to enter')).toBeTruthy();
  expect(screen.getAllByRole('listitem').map(({ textContent }) => textContent)).toEqual(['0 dark: outside', '+6 steady: inside']);
  await act(() => void click('Back'));
  await partsRead();
  await act(() => void click('Back'));
  await partsRead();
  expect(screen.getByRole('searchbox')).toBeTruthy();
});

test('a sweep of the logbook is replayed hold by hold, and how it was can be told later', async () => {
  const session = await logbook();
  await act(() => void fireEvent.click(screen.getAllByRole('button', { name: /Orrin 85/ })[0] ?? document.body));
  await partsRead();
  await act(() => void fireEvent.click(screen.getAllByRole('button', { name: 'See every hold, or add a note' })[0] ?? document.body));
  await partsRead();
  const replay = screen.getByText('Replay it, hold by hold').closest('details');
  await act(() => void fireEvent(replay ?? document.body, new Event('toggle')));
  expect(text()).toContain('Before the first hold.');
  await act(() => void click('Later'));
  expect(text()).toContain('Hold 1 at 0: the light stayed dark. It counts as outside the band.');
  await act(() => void click('Later'));
  await act(() => void click('Later'));
  expect(text()).toContain('The end of the sweep.');

  await act(() => void fireEvent.input(screen.getByLabelText('Temperature, °C'), { target: { value: '-5' } }));
  await act(() => void fireEvent.input(screen.getByLabelText('Note'), { target: { value: 'cold hall' } }));
  await act(() => void click('Save it with this sweep'));
  const told = session.records.value.filter(({ conditions }) => conditions?.temperature === -5);
  expect(told).toMatchObject([{ conditions: { note: 'cold hall', light: null } }]);
});

async function replayed(): Promise<void> {
  await logbook();
  await act(() => void fireEvent.click(screen.getAllByRole('button', { name: /Orrin 85/ })[0] ?? document.body));
  await partsRead();
  await act(() => void fireEvent.click(screen.getAllByRole('button', { name: 'See every hold, or add a note' })[0] ?? document.body));
  await partsRead();
  await act(() => void fireEvent(screen.getByText('Replay it, hold by hold').closest('details') ?? document.body, new Event('toggle')));
}

test('the slider of a replay stops at each hold and says in words what was held and how sure the centre was', async () => {
  await replayed();
  const slider = screen.getByRole('slider');
  expect([slider.getAttribute('min'), slider.getAttribute('max'), slider.getAttribute('step')]).toEqual(['0', '3', '1']);
  await act(() => void fireEvent.input(slider, { target: { value: '2' } }));
  expect(slider.getAttribute('aria-valuetext')).toMatch(
    /^Hold 2 at \+6: the light was steady\. It counts as inside the band\. The centre is between \S+ and \S+, 95% sure\.$/,
  );
  expect(
    screen.getByRole('img', { name: /^How the belief narrowed: the centre was between .* before the first hold, and between .* at the end\.$/ }),
  ).toBeTruthy();
});

test('a replay plays by itself to the end, is read out only where it halts, and begins anew when it is over', async () => {
  await replayed();
  const told = (): Element => screen.getByText(/95% sure\.$/);
  vi.useFakeTimers();
  try {
    await act(() => void click('Play'));
    await act(() => void vi.advanceTimersByTime(1500));
    expect(told().textContent).toContain('Hold 1 at 0');
    expect(told().getAttribute('aria-live')).toBe('off');
    await act(() => void click('Pause'));
    await act(() => void vi.advanceTimersByTime(5000));
    expect(told().textContent).toContain('Hold 1 at 0');
    expect(told().getAttribute('aria-live')).toBe('polite');
    await act(() => void click('Play'));
    for (const _ of [2, 3]) await act(() => void vi.advanceTimersByTime(1200));
    expect(told().textContent).toContain('The end of the sweep.');
    await act(() => void click('Play'));
    expect(told().textContent).toContain('Before the first hold.');
  } finally {
    vi.useRealTimers();
  }
});

test('where nothing may move by itself, a replay has its slider and no film', async () => {
  const asked = vi
    .spyOn(globalThis, 'matchMedia')
    .mockImplementation((media) => ({ ...new EventTarget(), matches: media.includes('reduce'), media }) as MediaQueryList);
  try {
    await replayed();
    expect(screen.queryByRole('button', { name: 'Play' })).toBeNull();
    expect(screen.getByRole('slider')).toBeTruthy();
  } finally {
    asked.mockRestore();
  }
});
