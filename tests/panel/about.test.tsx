// @vitest-environment happy-dom
// Contract of the screen that says what Sweepbook is: reached from settings and help, with the version, what is new, the licences, and a
// report that is saved as a file and names nothing of the kit.
import { cleanup, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test, vi } from 'vitest';
import { FakeSession } from './fakeSession.ts';
import { click, partsRead, show, text } from './show.tsx';

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

async function at(from: 'Settings' | 'Help'): Promise<FakeSession> {
  const session = await show(new FakeSession());
  for (const place of [from, 'About Sweepbook']) {
    await act(() => void click(place));
    await partsRead();
  }
  return session;
}

test.each(['Settings', 'Help'] as const)('%s leads there, and back again', async (from) => {
  await at(from);
  expect(screen.getByRole('main').dataset['screen']).toBe('about');
  await act(() => void click('Back'));
  expect(screen.getByRole('heading', { level: 1 }).textContent).toBe(from);
});

test('it tells the version, what is new, and that nothing is sent', async () => {
  await at('Settings');
  expect(text()).toContain('Version 0.1.0');
  expect(screen.getByRole('region', { name: 'What is new' }).querySelectorAll('li').length).toBeGreaterThan(0);
  expect(screen.getByRole('region', { name: 'Privacy' }).querySelectorAll('p')).toHaveLength(3);
  expect(text()).toContain('Nothing is sent: give the file to whoever helps you.');
});

test('the licences open in a tab', async () => {
  const session = await at('Help');
  await act(() => void click('Read the licences'));
  expect(session.asked).toEqual(['licences.txt']);
});

test('the report is saved as a file, with the versions and without the kit', async () => {
  const files: Blob[] = [];
  vi.spyOn(URL, 'createObjectURL').mockImplementation((file) => `blob:${files.push(file as Blob)}`);
  const names: string[] = [];
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    names.push(this.download);
  });
  await at('Settings');
  await act(() => void click('Save a fault report'));
  expect(names).toEqual(['sweepbook-fault-2026-11-20.json']);
  const report = (await files[0]?.text()) ?? '';
  expect(JSON.parse(report)).toMatchObject({ versions: { panel: '0.1.0', browser: 'Heron 5' }, kept: { bodies: 1, lenses: 1 } });
  expect(report).not.toMatch(/Velde|Orrin|orrin-85/);
});
