// @vitest-environment happy-dom
// Contract of a person's first holds on the sweep screen: what stands there, that it asks for no press, and that it ends.
import { cleanup, screen } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, test } from 'vitest';
import { FakeSession } from './fakeSession.ts';
import { button, click, key, partsRead, phase, show, text } from './show.tsx';

afterEach(cleanup);

test('the first hold needs no press but its own, two holds are coached, and a third is not', async () => {
  const session = await show(new FakeSession().open());
  expect(text()).toContain('The camera\u2019s button lights the focus light');
  expect(screen.getByLabelText('What the light can do').querySelectorAll('li')).toHaveLength(4);
  for (const coached of [1, 2]) {
    await act(() => key(' '));
    expect(phase()).toBe('holding');
    expect(text()).toContain('Press here only if the light fails');
    await act(() => void session.pass(5));
    expect(text()).toContain('let the camera\u2019s button go');
    await act(() => key(' '));
    expect(session.settings.value.coached).toBe(coached);
  }
  expect(screen.queryByLabelText('How a hold goes')).toBeNull();
});

test('what an eye at the finder cannot read is said, and nothing is said into the hold', async () => {
  const session = await show(new FakeSession().open());
  const before = session.said.length;
  expect(session.said.at(-1)).toBe('Tap the switch to begin. Then half-press the camera\u2019s button and keep it.');
  await act(() => key(' '));
  expect(session.said).toHaveLength(before);
  await act(() => void session.pass(5));
  expect(session.said.at(-1)).toBe('Tap if the light stayed on. Long press if it failed.');
});

test('the four lights are one press away at any time, and closed by another or by Escape', async () => {
  const session = new FakeSession().open();
  session.changeSettings({ coached: 2 });
  await show(session);
  expect(screen.queryByLabelText('What the light can do')).toBeNull();
  await act(() => void click('The four lights'));
  await partsRead();
  expect(screen.getAllByLabelText('What the light can do').length).toBeGreaterThan(0);
  expect(text()).toContain('Goes out, even once.');
  await act(() => void click('Close the four lights'));
  expect(screen.queryByLabelText('What the light can do')).toBeNull();
});

test('a press that is asked about is shown as a question in the place of the last thing heard', async () => {
  const session = new FakeSession().open();
  session.changeSettings({ coached: 2 });
  await show(session);
  await act(() => key(' '));
  await act(() => key(' '));
  await act(() => void session.pass(0.5));
  expect(screen.getByRole('alert').textContent).toBe('Did it flicker already? Press again if it did. If not, keep holding.');
  expect(button(/it flickered/)).toBeTruthy();
  expect(session.sweep.value?.journal.at(-1)?.did).toBe('began');
});
