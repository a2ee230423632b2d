// @vitest-environment happy-dom
// Contract of the logbook on screen: a lens's last value is found while one types, and a record opens with its holds.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
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

async function logbook(records: readonly LogRecord[] = RECORDS): Promise<void> {
  await show(new FakeSession({ records }));
  await act(() => void click('Logbook'));
  await partsRead();
}
const search = (query: string) => act(() => void fireEvent.input(screen.getByRole('searchbox'), { target: { value: query } }));
const entries = (): (string | null)[] => screen.queryAllByRole('button', { name: /Orrin/ }).map(({ textContent }) => textContent);

test('the newest record of each situation is listed, newest first, practice apart', async () => {
  await logbook();
  expect(entries()).toEqual([expect.stringContaining('Orrin 85 f/1.8'), expect.stringContaining('Orrin 35 f/2')]);
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
  expect(text()).toContain('Nothing in the logbook answers \u201czzz\u201d');
});

test('an empty logbook says what will be in it', async () => {
  await logbook([]);
  expect(text()).toContain('No sweep is finished yet.');
});

test('a record opens with its outcome and every hold, and back leads to the list', async () => {
  await logbook();
  await act(() => void fireEvent.click(screen.getAllByRole('button', { name: /Orrin 85/ })[0] ?? document.body));
  await partsRead();
  expect(screen.getByLabelText('Value to enter')).toBeTruthy();
  expect(screen.getAllByRole('listitem').map(({ textContent }) => textContent)).toEqual(['0 stayed dark: out', '+6 held: in']);
  await act(() => void click('Back'));
  expect(screen.getByRole('searchbox')).toBeTruthy();
});
