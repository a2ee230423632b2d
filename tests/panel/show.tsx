// Draws the panel over a session in memory, and finds on it what a person would look for.
import { configure, fireEvent, render, screen, within } from '@testing-library/preact';
import { act } from 'preact/test-utils';
import { vi } from 'vitest';
import { App } from '../../src/panel/app.tsx';
import type { FakeSession } from './fakeSession.ts';
import { watchFocus } from './focusKept.ts';

watchFocus();

/** Milliseconds. Whichever test comes first waits for what it reads on demand, on a busy machine for seconds. */
export const PATIENCE = 20_000;
configure({ asyncUtilTimeout: PATIENCE });

/** `asked`: the screen that the address asks for. */
export async function show(session: FakeSession, asked = ''): Promise<FakeSession> {
  render(<App session={session} asked={asked} />);
  await act(() => session.ready);
  await act(() => session.ready);
  await partsRead();
  return session;
}

/** What is read on demand has been read and drawn, and what that in turn asks for. */
export async function partsRead(): Promise<void> {
  await act(() => vi.dynamicImportSettled());
  await act(() => vi.dynamicImportSettled());
}

export const button = (name: string | RegExp): HTMLElement => screen.getByRole('button', { name });
export const click = (name: string | RegExp): boolean => fireEvent.click(button(name));
export const valueToSet = (): string | null => screen.getByLabelText('Value to set').textContent;
export const phase = (): string | null => screen.getByRole('main').getAttribute('data-phase');
export const group = (name: string) => within(screen.getByRole('group', { name }));
/** As it is read: whatever blank stands between two words. */
export const read = (element: Element | null | undefined): string => (element?.textContent ?? '').replaceAll(/[\u00a0\u202f]/gu, ' ');
export const text = (): string => read(screen.getByRole('main'));

/** A key pressed and released wherever the focus is. */
export function key(name: string): void {
  const target = document.activeElement ?? document.body;
  fireEvent.keyDown(target, { key: name });
  fireEvent.keyUp(target, { key: name });
}

export const type = (label: string, typed: string): boolean => fireEvent.input(screen.getByLabelText(label), { target: { value: typed } });

export const FIELD = 'Look up a lens, or name a new one';

/** From the start, behind \u201cMore\u201d. */
export async function toTheBench(): Promise<void> {
  await behindMore('Set up the bench');
}

/** Opens \u201cMore\u201d on the start and presses what stands there. */
export async function behindMore(name: string): Promise<void> {
  await act(() => void click('More'));
  await partsRead();
  await act(() => void click(name));
  await partsRead();
}

/** Types into a field and lets what is found appear. */
export async function lookUp(typed: string): Promise<void> {
  await act(() => void type(FIELD, typed));
  await partsRead();
}
