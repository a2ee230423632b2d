// The switch button as a contact: down when a pointer goes down on it, up when it comes up. Its keys are those of the
// whole screen. A click without pointer or key (a screen reader's) is a short press.
import { waitOf } from '../../platform/clock.ts';
import { useSession } from '../useSession.ts';

export function useContact() {
  const session = useSession();
  const up = (event: PointerEvent): void => session.contact('up', waitOf(event));
  return {
    onPointerDown(event: PointerEvent): void {
      if (event.button !== 0) return;
      // The pointer may come up beside the button.
      if (event.target instanceof Element) event.target.setPointerCapture(event.pointerId);
      session.contact('down', waitOf(event));
    },
    onPointerUp: up,
    onPointerCancel: up,
    onContextMenu: (event: Event): void => event.preventDefault(),
    onClick(event: MouseEvent): void {
      if (event.detail > 0) return;
      session.contact('down');
      session.contact('up');
    },
  };
}
