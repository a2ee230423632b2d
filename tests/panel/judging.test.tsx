// @vitest-environment happy-dom
// Contract of the pictures where a light is judged: each verdict's button shows the course of such a hold, each arrow's its arrows, none of
// it changes what a button is called, and the arrows are explained only where the body has them.
import { cleanup, screen, within } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { FakeSession, PLAN } from './fakeSession.ts';
import { click, key, partsRead, phase, show } from './show.tsx';

afterEach(cleanup);

async function judging(arrows: 'absent' | 'right-is-up'): Promise<void> {
  const session = new FakeSession({ plan: { ...PLAN, arrows } }).open();
  session.changeSettings({ coached: 2 });
  await show(session);
  await act(() => key(' '));
  await act(() => void session.pass(5));
  expect(phase()).toBe('judging');
}

/** Of the bar on a button: where the light is on, in parts of the hold. */
const litOn = (name: string): number[][] =>
  [...screen.getByRole('button', { name }).querySelectorAll('.course .stretch')].map((one) => {
    const [x, width] = ['x', 'width'].map((of) => Number(one.getAttribute(of)) / 40);
    return [x!, x! + width!];
  });

test('the bar on each verdict is the course of such a hold, from its beginning to its end', async () => {
  await judging('absent');
  expect(litOn('solid S')).toEqual([[0, 1]]);
  const [late] = litOn('delayed D');
  expect(late![0]).toBeGreaterThan(0.1);
  expect(late![1]).toBeCloseTo(1, 6);
  expect(litOn('flicker F').length).toBeGreaterThan(1);
  expect(litOn('nothing N')).toEqual([]);
});

test('the arrows are drawn on their buttons: one on its side, both filled where they are even, both hollow where they are not', async () => {
  await judging('right-is-up');
  const drawn = (name: RegExp) => [...screen.getByRole('button', { name }).querySelectorAll('.arrows path')].map((one) => one.getAttribute('class'));
  expect(drawn(/^left/)).toEqual(['filled']);
  expect(drawn(/^right/)).toEqual(['filled']);
  expect(drawn(/^balanced/)).toEqual(['filled', 'filled']);
  expect(drawn(/^lopsided/)).toEqual(['hollow', 'hollow']);
});

test('the sheet of the four lights explains the arrows in words, and only on a body that has them', async () => {
  await judging('right-is-up');
  await act(() => void click('The four lights'));
  await partsRead();
  const arrows = within(screen.getByRole('list', { name: 'What the arrows can do' }));
  expect(arrows.getAllByRole('listitem').map(({ textContent }) => textContent)).toEqual([
    'left \u2190Left alone.',
    'right \u2192Right alone.',
    'balanced BBoth, evenly.',
    'lopsided LBoth, unevenly.',
  ]);
  cleanup();
  await judging('absent');
  await act(() => void click('The four lights'));
  await partsRead();
  expect(screen.queryByRole('list', { name: 'What the arrows can do' })).toBeNull();
});

test('the help says how a steady light counts with each of the arrows', async () => {
  await show(new FakeSession());
  await act(() => void click('Help'));
  await partsRead();
  const arrows = within(screen.getByRole('list', { name: 'What the arrows can do' }));
  expect(arrows.getAllByRole('listitem').map(({ textContent }) => /counts as (in|out)$/.exec(textContent ?? '')?.[1])).toEqual(['out', 'out', 'in', 'out']);
});
