// To the voice sheet. Elsewhere no key is heard, so a sweep waits meanwhile.
import type { Way } from '../route.ts';
import type { Session } from '../session/session.ts';

export function toSheet(session: Session, way: Way): void {
  if (session.understood.peek()?.words.includes('pause')) session.input({ told: 'pause', by: 'pointer', heard: null });
  way.go({ at: 'voice' });
}
