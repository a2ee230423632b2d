// @vitest-environment happy-dom
// Contract of focus that stays: what goes away when it is pressed leaves the focus to what it stood in, as near as that still is; never to another
// control, and never where a new screen begins.
import { cleanup, render } from '@testing-library/preact';
import type { ComponentChildren } from 'preact';
import { afterEach, expect, test } from 'vitest';
import { useFocusStays } from '../../src/panel/keys/focusStays.ts';

afterEach(cleanup);

function Panel({ screen = 'start', phase, children }: { readonly screen?: string; readonly phase?: string; readonly children: ComponentChildren }) {
  useFocusStays();
  return (
    <main data-screen={screen} data-phase={phase}>
      <h1 tabIndex={-1}>Title</h1>
      {children}
    </main>
  );
}

const CARD = (
  <section>
    <div class="row">
      <button type="button">Erase</button>
    </div>
    <button type="button">Keep</button>
  </section>
);
const WITHOUT_ROW = (
  <section>
    <button type="button">Keep</button>
  </section>
);

async function focusAfter(before: ComponentChildren, after: ComponentChildren): Promise<string | undefined> {
  const { container, rerender } = render(before as never);
  container.querySelector('button')?.focus();
  rerender(after as never);
  await new Promise((go) => setTimeout(go, 5));
  return document.activeElement?.tagName;
}

test('what the control stood in takes the focus, the innermost that is still there', async () => {
  expect(await focusAfter(<Panel>{CARD}</Panel>, <Panel>{WITHOUT_ROW}</Panel>)).toBe('SECTION');
});

test('where all of it is gone, the title of the screen does', async () => {
  expect(await focusAfter(<Panel>{CARD}</Panel>, <Panel>{null}</Panel>)).toBe('H1');
});

test('after a sweep it is so, too; in a sweep, and on another screen, the focus is not touched', async () => {
  expect(await focusAfter(<Panel phase="finished">{CARD}</Panel>, <Panel phase="finished">{WITHOUT_ROW}</Panel>)).toBe('SECTION');
  cleanup();
  expect(await focusAfter(<Panel phase="holding">{CARD}</Panel>, <Panel phase="judging">{WITHOUT_ROW}</Panel>)).toBe('BODY');
  cleanup();
  expect(await focusAfter(<Panel>{CARD}</Panel>, <Panel screen="kit">{WITHOUT_ROW}</Panel>)).toBe('BODY');
});
