// Has the browser ask for the microphone: here where it can, or in a tab where the panel can show no question.
import type { Session } from '../session/session.ts';

/** True when it may be used: not every browser keeps a record of that. */
export async function askFor(session: Session): Promise<boolean> {
  const microphone = await session.microphone();
  const refused = await microphone.ask();
  if (!refused) session.listenAgain(false);
  else if (refused.why === 'blocked') session.openPage('microphone.html');
  else if (refused.why === 'not asked' && refused.atOnce) session.openPage('microphone.html#ask');
  return refused === null;
}
