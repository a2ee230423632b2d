// The button that brings the checks into view and reads them.
import { words } from '../../words/catalogue.ts';
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
    session.say([heading, ...checks].map(({ textContent }) => textContent?.replace(/[^.:?]$/, '$&.') ?? '').join(' '));
  };
  return (
    <button type="button" class="chief" onClick={show}>
      {words('trouble').toCheck.open}
    </button>
  );
}
