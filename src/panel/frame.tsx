// What surrounds every screen: where the panel is, for tests and styles, and what is announced to those who hear it.
import type { ComponentChildren } from 'preact';
import { firstWords } from '../words/first.ts';

interface Props {
  /** Absent until what is stored has been read. */
  readonly screen?: string | undefined;
  readonly phase?: string | undefined;
  readonly announcement: string;
  readonly children: ComponentChildren;
}

export const Frame = ({ screen, phase, announcement, children }: Props) => (
  <main data-screen={screen} data-phase={phase}>
    <output class="unseen" aria-label={firstWords().announcement} aria-live="polite">
      {announcement}
    </output>
    {children}
  </main>
);
