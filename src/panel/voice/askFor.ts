// Has the browser ask for the microphone: here where it can, or in a tab where the panel can show no question.
import type { Session } from '../session/session.ts';

export async function askFor(session: Session): Promise<void> {
  const microphone = await session.microphone();
  const refused = await microphone.ask();
  if (!refused) return session.listenAgain(false);
  if (refused.why === 'blocked') return session.openPage('microphone.html');
  if (refused.why === 'not asked' && refused.atOnce) session.openPage('microphone.html#ask');
}
