// @vitest-environment happy-dom
// Contract of what is done before the panel can answer: nothing happens then, everything happens once, in its order.
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { holdInputs, type Held } from '../../../src/panel/early/held.ts';

let done: string[];
let held: Held;
const find = <Kind extends HTMLElement>(selector: string): Kind => document.querySelector(selector) as Kind;

beforeEach(() => {
  vi.useFakeTimers();
  document.body.innerHTML = '<div id="panel"><form><input><button type="submit">Start</button></form><button type="button" id="b">B</button></div>';
  done = [];
  held = holdInputs(find('#panel'));
  for (const selector of ['#b', '[type="submit"]']) find(selector).addEventListener('click', () => done.push(selector));
  find('form').addEventListener('submit', (event) => {
    event.preventDefault();
    done.push('submitted');
  });
  document.addEventListener('keydown', onKey);
  document.addEventListener('keyup', onUp);
  find('input').addEventListener('input', () => done.push(`typed ${find<HTMLInputElement>('input').value}`));
});
afterEach(() => {
  release();
  vi.useRealTimers();
  document.removeEventListener('keydown', onKey);
  document.removeEventListener('keyup', onUp);
});
function release(): void {
  held.release();
  vi.runAllTimers();
}
const onKey = ({ key, shiftKey }: KeyboardEvent): void => void done.push(`${shiftKey ? 'shift ' : ''}${key}`);
const onUp = ({ key }: KeyboardEvent): void => void done.push(`${key} up`);
const letGo = (target: HTMLElement, key: string): boolean => target.dispatchEvent(new KeyboardEvent('keyup', { key, bubbles: true, cancelable: true }));
const press = (target: HTMLElement, key: string, shiftKey = false): boolean =>
  target.dispatchEvent(new KeyboardEvent('keydown', { key, shiftKey, bubbles: true, cancelable: true }));

test('presses and keys wait for the panel and then come in the order in which they were made', () => {
  find('#b').click();
  press(document.body, 'K', true);
  find('[type="submit"]').click();
  expect(done).toEqual([]);
  release();
  expect(done).toEqual(['#b', 'shift K', '[type="submit"]', 'submitted']);
});

test('a form does not leave the page while the panel cannot take it', () => {
  find('[type="submit"]').click();
  expect(done).toEqual([]);
});

test('a key that makes a click of a button counts as that click alone', () => {
  press(find('#b'), ' ');
  find('#b').click();
  release();
  expect(done).toEqual(['#b']);
});

test('a key comes up after it went down, also where the focus went to a button in between', () => {
  press(document.body, ' ');
  letGo(find('#b'), ' ');
  press(document.body, 'd');
  release();
  letGo(document.body, 'd');
  expect(done).toEqual([' ', '  up', 'd', 'd up']);
});

test('what was typed is told as soon as the panel is drawn, and stays in its field', () => {
  const field = find<HTMLInputElement>('input');
  field.value = 'orr';
  held.tellTyped();
  expect(done).toEqual(['typed orr']);
  expect(field.value).toBe('orr');
});

test('a press is waited for before anything may be drawn anew under the finger', async () => {
  let up = false;
  find('#b').dispatchEvent(new Event('pointerdown', { bubbles: true }));
  void held.letUp().then(() => (up = true));
  await vi.advanceTimersByTimeAsync(50);
  expect(up).toBe(false);
  find('#b').dispatchEvent(new Event('pointerup', { bubbles: true }));
  await vi.advanceTimersByTimeAsync(1);
  expect(up).toBe(true);
});

test('what was drawn anew with the same id gets the press', () => {
  find('#b').click();
  find('#b').outerHTML = '<button type="button" id="b">B</button>';
  find('#b').addEventListener('click', () => done.push('the new one'));
  release();
  expect(done).toEqual(['the new one']);
});

test('once released, nothing is kept any more', () => {
  release();
  find('#b').click();
  release();
  expect(done).toEqual(['#b']);
});
