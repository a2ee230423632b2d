// The heading of a screen. It takes the focus when its screen appears, so that keyboard and screen reader start there.
import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { Back } from './back.tsx';

interface Props {
  readonly children: ComponentChildren;
  /** Shows a button that leads back; Escape does the same, except in a field where something may be typed. */
  readonly onBack?: () => void;
  /** Stands at the end of the line. */
  readonly beside?: ComponentChildren;
}

export function Heading({ children, onBack, beside }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  // Before anything can be pressed on the new screen, or the focus would be taken from there. On the screen that stood in the
  // page before the panel was drawn, it may be somewhere already.
  useLayoutEffect(() => {
    if (document.activeElement === document.body) heading.current?.focus();
  }, []);
  useEffect(() => {
    if (!onBack) return;
    const pressed = ({ key, target, defaultPrevented }: KeyboardEvent): void => {
      if (key === 'Escape' && !defaultPrevented && !(target as Element).matches('input, select, textarea')) onBack();
    };
    document.addEventListener('keydown', pressed);
    return () => document.removeEventListener('keydown', pressed);
  }, [onBack]);
  return (
    <header class="heading">
      {onBack && <Back onBack={onBack} />}
      <h1 ref={heading} tabIndex={-1}>
        {children}
      </h1>
      {beside}
    </header>
  );
}
