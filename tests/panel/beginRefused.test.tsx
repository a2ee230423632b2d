// @vitest-environment happy-dom
// Contract of every button that begins a sweep: where none can begin, the reason stands on the screen it was asked for on.
import { cleanup, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { failed } from '../../src/result.ts';
import { FakeSession } from './fakeSession.ts';
import { click, partsRead, show } from './show.tsx';

afterEach(cleanup);

const REASON = 'Another window has just begun a sweep. Finish that one first.';

function refusing(): FakeSession {
  const session = new FakeSession();
  session.begin = () => Promise.resolve(failed(REASON));
  return session;
}

async function pressed(name: string | RegExp): Promise<void> {
  await act(() => void click(name));
  await partsRead();
}

test('the practice camera that cannot begin says why', async () => {
  await show(refusing());
  await pressed('Practice camera');
  await pressed('Practise');
  expect(screen.getByRole('alert').textContent).toBe(REASON);
});

test('a situation that cannot be measured now says why', async () => {
  await show(refusing());
  await pressed('Logbook');
  await pressed(/Orrin 85/);
  await pressed(/^Measure/);
  expect(screen.getByRole('alert').textContent).toBe(REASON);
});
