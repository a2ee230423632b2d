// The heading of a screen. It takes the focus when its screen appears, so that keyboard and screen reader start there.
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

interface Props {
  readonly children: ComponentChildren;
  /** Shows a button that leads back. */
  readonly onBack?: () => void;
}

export function Heading({ children, onBack }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <header class="heading">
      {onBack && (
        <button type="button" class="back" aria-label="Back" onClick={onBack}>
          <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
            <path d="M10 2 4 8l6 6" fill="none" stroke="currentColor" stroke-width="2" />
          </svg>
        </button>
      )}
      <h1 ref={heading} tabIndex={-1}>
        {children}
      </h1>
    </header>
  );
}
