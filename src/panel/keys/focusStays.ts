// What has the keyboard's focus may go away when it is pressed. Then what it stood in takes the focus, so that whoever works by keys, or hears the
// screen, goes on from there and presses nothing by mistake. A screen that gives way to another leaves that to its heading; in a sweep the keys go to the
// panel as a whole.
import { useEffect } from 'preact/hooks';

export function useFocusStays(): void {
  useEffect(() => {
    let last: HTMLElement[] = [];
    let screen: string | undefined;
    const noted = ({ target }: FocusEvent): void => {
      last = upTo(target as HTMLElement);
      screen = panel()?.dataset['screen'];
    };
    const changes = new MutationObserver(() => {
      const main = panel();
      if (!main || last[0]?.isConnected !== false || document.activeElement !== document.body) return;
      const place = last.find(({ isConnected }) => isConnected) ?? main.querySelector('h1');
      last = [];
      if (!place || main.dataset['screen'] !== screen || (main.dataset['phase'] ?? 'finished') !== 'finished') return;
      place.tabIndex = -1;
      place.focus({ preventScroll: true });
    });
    document.addEventListener('focusin', noted);
    changes.observe(document.body, { childList: true, subtree: true });
    return () => {
      document.removeEventListener('focusin', noted);
      changes.disconnect();
    };
  }, []);
}

const panel = () => document.querySelector('main');

/** The element and what it stands in, from the innermost on; the panel itself is not among them. */
const upTo = (element: HTMLElement | null): HTMLElement[] => (element?.closest('main *') ? [element, ...upTo(element.parentElement)] : []);
