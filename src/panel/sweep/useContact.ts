// The switch button as a contact: down when a pointer or a key goes down on it, up when it comes up. A click without
// either (a screen reader's) is a short press.
import { useSession } from '../useSession.ts';

const KEYS = ['Enter', ' '];

export function useContact() {
  const session = useSession();
  const up = (): void => session.contact('up');
  return {
    onPointerDown(event: PointerEvent): void {
      if (event.button !== 0) return;
      if (event.target instanceof Element) event.target.setPointerCapture(event.pointerId);
      session.contact('down');
    },
    onPointerUp: up,
    onPointerCancel: up,
    onContextMenu: (event: Event): void => event.preventDefault(),
    onKeyDown(event: KeyboardEvent): void {
      if (!KEYS.includes(event.key)) return;
      event.preventDefault();
      if (!event.repeat) session.contact('down');
    },
    onKeyUp(event: KeyboardEvent): void {
      if (!KEYS.includes(event.key)) return;
      event.preventDefault();
      session.contact('up');
    },
    onClick(event: MouseEvent): void {
      if (event.detail > 0) return;
      session.contact('down');
      session.contact('up');
    },
  };
}
