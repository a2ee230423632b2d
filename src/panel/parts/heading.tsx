// The heading of a screen. It takes the focus when its screen appears, so that keyboard and screen reader start there.
import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { Back } from './back.tsx';

interface Props {
  readonly children: ComponentChildren;
  /** Shows a button that leads back. */
  readonly onBack?: () => void;
}

export function Heading({ children, onBack }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  // Before anything can be pressed on the new screen, or the focus would be taken from there.
  useLayoutEffect(() => heading.current?.focus(), []);
  return (
    <header class="heading">
      {onBack && <Back onBack={onBack} />}
      <h1 ref={heading} tabIndex={-1}>
        {children}
      </h1>
    </header>
  );
}
