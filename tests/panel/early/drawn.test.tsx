// @vitest-environment happy-dom
// Contract of the page as the build draws it: the panel takes it over as it stands, so that nothing pressed in it is lost.
import { hydrate } from 'preact';
import { act } from 'preact/test-utils';
import { expect, test, vi } from 'vitest';
import { App } from '../../../src/panel/app.tsx';
import { drawn } from '../../../src/panel/early/drawn.tsx';
import { FakeSession } from '../fakeSession.ts';

test('the panel keeps every element of the drawn page, before and after it is ready', async () => {
  document.body.innerHTML = `<div id="panel">${drawn().drawn}</div>`;
  const place = document.querySelector('#panel') as HTMLElement;
  const before = [...place.querySelectorAll('*')];
  const html = place.innerHTML;
  const session = new FakeSession();
  const onReady = vi.fn<() => void>();
  await act(() => hydrate(<App session={session} onReady={onReady} />, place));
  expect(onReady).not.toHaveBeenCalled();
  expect(place.innerHTML).toBe(html);
  await act(() => session.ready);
  await act(() => vi.dynamicImportSettled());
  expect(onReady).toHaveBeenCalledOnce();
  expect(before.filter(({ isConnected }) => !isConnected)).toEqual([]);
  expect(place.querySelector('main')?.dataset['screen']).toBe('start');
});
