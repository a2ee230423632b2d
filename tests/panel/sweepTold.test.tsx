// @vitest-environment happy-dom
// Contract of the sweep screen: what is understood and heard is shown, a follower only watches, and every hold is told.
import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, test } from 'vitest';
import { PLAN, FakeSession } from './fakeSession.ts';
import { button, click, group, key, phase, show, valueToSet } from './show.tsx';

afterEach(cleanup);

const sweep = (): FakeSession => new FakeSession().open();

describe('what is understood', () => {
  test.each(['dialling', 'holding', 'paused'] as const)('every word understood while %s has its button', async (wanted) => {
    const session = await show(new FakeSession({ plan: { ...PLAN, arrows: 'right-is-up' } }).open().hold('flicker', 0));
    if (wanted !== 'dialling') await act(() => key(wanted === 'holding' ? ' ' : 'p'));
    expect(phase()).toBe(wanted);
    const words = session.understood.value?.words ?? [];
    for (const word of words) {
      // The word for beginning the hold is the switch itself.
      const name = word === 'holding' ? /^begin the hold holding Space/ : new RegExp(`^${word} \\S+$`);
      expect(screen.getByRole('button', { name })).toBeTruthy();
    }
  });

  test('after a verdict on a body with arrows, the arrows may still be told', async () => {
    const session = await show(new FakeSession({ plan: { ...PLAN, arrows: 'right-is-up' } }).open().hold('flicker', 0));
    await act(() => void fireEvent.click(group('Arrows of the last hold').getByRole('button', { name: /^right/ })));
    expect(session.sweep.value?.holds.at(-1)?.verdict).toEqual({ light: 'flicker', arrows: 'right' });
  });
});

describe('what is heard and said', () => {
  test('every announcement reaches those who hear the screen', async () => {
    const session = await show(sweep());
    await act(() => void (session.announcement.value = 'Set +6.'));
    const live = screen.getByLabelText('Announcement');
    expect(live.getAttribute('aria-live')).toBe('polite');
    expect(live.textContent).toBe('Set +6.');
  });

  test('what only a tone tells is told in words as well', async () => {
    const session = await show(sweep());
    await act(() => key(' '));
    expect(screen.getByLabelText('The hold').textContent).toBe('Holding.');
    await act(() => void session.pass(5));
    expect(screen.getByLabelText('The hold').textContent).toBe('The time is up. Was the light steady?');
  });

  test('a trouble is one sentence with its remedy, and can be put away', async () => {
    const session = sweep();
    session.troubles.value = [{ id: 'full', sentence: 'The disk is full.', remedy: { label: 'Try again', run: () => session.asked.push('again') } }];
    await show(session);
    expect(screen.getByRole('alert').textContent).toContain('The disk is full.');
    click('Try again');
    expect(session.asked).toEqual(['again']);
    await act(() => void click('Dismiss'));
    expect(screen.queryByRole('alert')).toBeNull();
  });
});

describe('following', () => {
  test.each(['follower', 'asking'] as const)('a panel that is %s can be told nothing but to take over', async (role) => {
    const session = sweep();
    session.role.value = role;
    await show(session);
    await act(() => void click('Follow it'));
    expect(screen.queryByRole('button', { name: /begin the hold/ })).toBeNull();
    expect(screen.queryByRole('group', { name: 'Answers understood now' })).toBeNull();
    expect(valueToSet()).toBeTruthy();
    await act(() => void click('Take over here'));
    expect(button(/begin the hold/)).toBeTruthy();
  });
});

describe('the holds so far', () => {
  test('are listed in words for those who cannot see the strip', async () => {
    await show(sweep().hold('flicker', 5).hold('steady', 3));
    const items = screen.getAllByRole('listitem').map((item) => item.textContent);
    expect(items).toEqual(['+5 flickering: outside', '+3 steady: inside']);
  });
});
