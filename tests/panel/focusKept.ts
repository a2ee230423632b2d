// A control that goes away when it is pressed must leave the keyboard's focus in the panel: otherwise whoever works by keys, or hears the screen,
// begins again at its top. Watched in every test that presses something in the drawn panel; a screen that gives way to another is the heading's affair,
// and in a sweep the keys go to the panel as a whole.
import { afterEach } from 'vitest';

interface Pressed {
  readonly control: HTMLElement;
  readonly name: string;
  readonly main: HTMLElement;
  readonly screen: string | undefined;
}

let pressed: Pressed | null = null;
const lost: string[] = [];

/** Focuses what is pressed, as browsers do. */
export function watchFocus(): void {
  document.addEventListener(
    'click',
    ({ target }) => {
      look();
      const control = (target as Element).closest<HTMLElement>('button, summary, a');
      const main = control?.closest('main');
      if (!control || !main) return;
      control.focus();
      pressed = { control, name: control.textContent ?? '', main, screen: main.dataset['screen'] };
    },
    true,
  );
  new MutationObserver(() => setTimeout(look)).observe(document.body, { childList: true, subtree: true });
}

function look(): void {
  if (pressed === null || pressed.control.isConnected) return;
  const { name, main, screen } = pressed;
  pressed = null;
  const sweeping = !['finished', undefined].includes(main.dataset['phase']);
  const stays = main.isConnected && main.dataset['screen'] === screen && !sweeping;
  if (stays && document.activeElement === document.body) lost.push(name);
}

afterEach(() => {
  const all = lost.splice(0);
  pressed = null;
  if (all.length > 0) throw new Error(`These went away when they were pressed, and the focus with them: ${all.join(', ')}.`);
});
