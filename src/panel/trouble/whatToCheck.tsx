// The button that brings the checks into view and reads them.
import { words } from '../../words/catalogue.ts';
import { inUse } from '../../words/inUse.ts';
import { closed, run } from '../../words/run.ts';
import { useSession } from '../useSession.ts';

/** Where the checks of the screen stand. */
export const CHECKS_ID = 'what-to-check';

export function WhatToCheck() {
  const session = useSession();
  const show = (): void => {
    const heading = document.getElementById(CHECKS_ID);
    if (!heading) return;
    heading.scrollIntoView({ block: 'start' });
    heading.focus({ preventScroll: true });
    const checks = heading.parentElement?.querySelectorAll('li') ?? [];
    const written = run([heading, ...checks].map(({ textContent }) => closed(textContent ?? '')));
    const { screens, voice } = inUse.peek();
    // A voice of another language would garble what is shown.
    session.say({ spoken: screens === voice ? written : '', written });
  };
  return (
    <button type="button" class="chief" onClick={show}>
      {words('trouble').toCheck.open}
    </button>
  );
}
