// @vitest-environment happy-dom
// Contract of the reminder on the start: it writes the backup, can be put off, is silenced for good in the settings, and never stands in a sweep.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { DAY, libraryWith, sweepRecord } from '../logbook/libraryWith.ts';
import { FakeSession } from './fakeSession.ts';
import { click, partsRead, show, text } from './show.tsx';

const NOW = Date.UTC(2026, 10, 20, 9, 0, 0);
const LINE = '5 records are in no backup.';
const inUse = (count = 5): FakeSession =>
  new FakeSession({ records: libraryWith({ records: Array.from({ length: count }, (_, at) => sweepRecord(`r${at}`, NOW - (at + 1) * DAY, -2, 2)) }).records });

let saved: string[];
beforeEach(() => {
  saved = [];
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    saved.push(this.download);
  });
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

const press = async (name: string): Promise<void> => {
  await act(() => void click(name));
  await partsRead();
};

test('after five records it says what an uninstall does, and one press writes the backup', async () => {
  const session = await show(inUse());
  expect(text()).toContain(LINE);
  expect(text()).toContain('When Sweepbook is uninstalled, the logbook is deleted.');
  await press('Write a backup file');
  expect(saved).toEqual(['sweepbook-backup-2026-11-20.json']);
  expect(session.backedUp.value).toBe(session.now.value);
  expect(text()).not.toContain('in no backup');
});

test('put off, it is gone, and comes again after 30 days', async () => {
  const session = await show(inUse());
  await press('Not now');
  expect(text()).not.toContain('in no backup');
  cleanup();
  session.pass(30 * 24 * 60 * 60);
  await show(session);
  expect(text()).toContain(LINE);
});

test('with four records it does not stand there', async () => {
  await show(inUse(4));
  expect(text()).not.toContain('in no backup');
});

test('the settings silence it for good, on the start and in the logbook', async () => {
  const session = await show(inUse());
  await press('Settings');
  await act(() => void fireEvent.click(screen.getByLabelText(/Remind me of a backup/)));
  expect(session.settings.value.logbook.remind).toBe(false);
  await press('Back');
  expect(text()).not.toContain('in no backup');
  await press('Logbook');
  expect(text()).not.toContain('There is no backup');
});

test('during a sweep it never stands there, nor while one waits', async () => {
  const session = inUse();
  session.open();
  await show(session);
  expect(text()).not.toContain('in no backup');
  await press('Leave for the start. The sweep waits.');
  expect(screen.getByRole('main').dataset['screen']).toBe('start');
  expect(text()).not.toContain('in no backup');
});
