// @vitest-environment happy-dom
// Contract of what is done before the panel can answer: nothing happens then, everything happens once, in its order.
import { afterEach, beforeEach, expect, test } from 'vitest';
import { holdInputs, type Held } from '../../../src/panel/early/held.ts';

let done: string[];
let held: Held;
const find = <Kind extends HTMLElement>(selector: string): Kind => document.querySelector(selector) as Kind;

beforeEach(() => {
  document.body.innerHTML = '<div id="panel"><form><input><button type="submit">Start</button></form><button type="button" id="b">B</button></div>';
  done = [];
  held = holdInputs(find('#panel'));
  for (const selector of ['#b', '[type="submit"]']) find(selector).addEventListener('click', () => done.push(selector));
  find('form').addEventListener('submit', (event) => {
    event.preventDefault();
    done.push('submitted');
  });
  document.addEventListener('keydown', onKey);
  find('input').addEventListener('input', () => done.push(`typed ${find<HTMLInputElement>('input').value}`));
});
afterEach(() => {
  held.release();
  document.removeEventListener('keydown', onKey);
});
const onKey = ({ key, shiftKey }: KeyboardEvent): void => void done.push(`${shiftKey ? 'shift ' : ''}${key}`);
const press = (target: HTMLElement, key: string, shiftKey = false): boolean =>
  target.dispatchEvent(new KeyboardEvent('keydown', { key, shiftKey, bubbles: true, cancelable: true }));

test('presses and keys wait for the panel and then come in the order in which they were made', () => {
  find('#b').click();
  press(document.body, 'K', true);
  find('[type="submit"]').click();
  expect(done).toEqual([]);
  held.release();
  expect(done).toEqual(['#b', 'shift K', '[type="submit"]', 'submitted']);
});

test('a form does not leave the page while the panel cannot take it', () => {
  find('[type="submit"]').click();
  expect(done).toEqual([]);
});

test('a key that makes a click of a button counts as that click alone', () => {
  press(find('#b'), ' ');
  find('#b').click();
  held.release();
  expect(done).toEqual(['#b']);
});

test('what was typed is told as soon as the panel is drawn, and stays in its field', () => {
  const field = find<HTMLInputElement>('input');
  field.value = 'orr';
  held.tellTyped();
  expect(done).toEqual(['typed orr']);
  expect(field.value).toBe('orr');
});

test('once released, nothing is kept any more', () => {
  held.release();
  find('#b').click();
  held.release();
  expect(done).toEqual(['#b']);
});
