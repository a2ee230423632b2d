// Brings the person to the first field that does not fit.
import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

export function useFirstFault(faults: object): RefObject<HTMLFormElement | null> {
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus(), [faults]);
  return form;
}
