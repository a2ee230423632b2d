// @vitest-environment happy-dom
// Contract of the note after an update: one line on the first start, which leads to what is new and is gone once it was seen; none after
// the first install.
import { cleanup, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { FakeSession } from './fakeSession.ts';
import { click, partsRead, show, text } from './show.tsx';

afterEach(cleanup);

const NOTE = 'Sweepbook is now 0.1.0: what is new';
const after = (version: string | null): FakeSession => Object.assign(new FakeSession(), { seen: version });

test('it leads to what is new, and is not there again', async () => {
  const session = await show(after('0.0.9'));
  await act(() => void click(NOTE));
  await partsRead();
  expect(screen.getByRole('main').dataset['screen']).toBe('about');
  await act(() => void click('Back'));
  expect(text()).not.toContain(NOTE);
  cleanup();
  await show(session);
  expect(text()).not.toContain(NOTE);
});

test.each([null, '0.1.0'])('where %s was seen last there is none', async (version) => {
  const session = await show(after(version));
  expect(text()).not.toContain('what is new');
  expect(session.seen).toBe('0.1.0');
});

test('a sweep under way puts it off to the next start', async () => {
  const session = after('0.0.9').open();
  await show(session);
  expect([text().includes(NOTE), session.seen]).toEqual([false, '0.0.9']);
});
