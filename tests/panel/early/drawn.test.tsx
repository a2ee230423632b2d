// @vitest-environment happy-dom
// Contract of the page as the build draws it: the panel takes it over as it stands, and what was done in it is not lost.
import { hydrate, render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { App } from '../../../src/panel/app.tsx';
import { drawn } from '../../../src/panel/early/drawn.tsx';
import { holdInputs, type Held } from '../../../src/panel/early/held.ts';
import { FakeSession } from '../fakeSession.ts';
import { partsRead, PATIENCE } from '../show.tsx';

let place: HTMLElement;
let held: Held;
beforeEach(async () => {
  vi.stubGlobal('matchMedia', () => ({ matches: true }));
  document.body.innerHTML = `<div id="panel" hidden>${(await drawn())[0]?.start}</div>`;
  place = document.querySelector('#panel') as HTMLElement;
  held = holdInputs(place);
});

afterEach(() => {
  render(null, place);
  vi.unstubAllGlobals();
});

const find = <Kind extends HTMLElement>(id: string): Kind => document.getElementById(id) as Kind;

async function taken(session: FakeSession): Promise<void> {
  await act(() => hydrate(<App session={session} held={held} />, place));
  held.tellTyped();
}

async function ready(session: FakeSession): Promise<void> {
  await act(() => session.ready);
  await partsRead();
  await act(async () => void (await vi.waitUntil(() => !place.hidden, PATIENCE)));
  await act(() => new Promise((go) => setTimeout(go)));
  await partsRead();
}

test('until it is ready the panel changes nothing of the drawn page, and then it is the start', async () => {
  const html = place.innerHTML;
  const session = new FakeSession();
  hydrate(<App session={session} held={held} />, place);
  expect(place.innerHTML).toBe(html);
  await ready(session);
  expect(place.querySelector('main')?.dataset['screen']).toBe('start');
});

test('Start pressed in the drawn page begins once, when the panel is ready', async () => {
  const session = new FakeSession();
  find('start-button').click();
  await taken(session);
  expect(session.asked).toEqual([]);
  await ready(session);
  expect(session.asked.filter((asked) => asked.startsWith('begin'))).toHaveLength(1);
});

test('what was typed in the drawn page stands in the field of the start', async () => {
  const session = new FakeSession();
  find<HTMLInputElement>('start-field').value = 'Corvid 85';
  await taken(session);
  await ready(session);
  expect(find<HTMLInputElement>('start-field').value).toBe('Corvid 85');
  expect(document.activeElement).toBe(find('start-field'));
});

test('a link of the drawn page leads where it says', async () => {
  const session = new FakeSession();
  [...place.querySelectorAll('button')].find(({ textContent }) => textContent === 'Logbook')?.click();
  await taken(session);
  await ready(session);
  expect(place.querySelector('main')?.dataset['screen']).toBe('logbook');
});
