// The width an element has on the screen, kept up to date, so that what is drawn in pixels fits.
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { RefObject } from 'preact';

/** Before the first measurement: the narrowest sidebar; and less than can be drawn in. */
const NARROW = 216;
const NARROWEST = 140;

export function useWidth<Place extends HTMLElement>(): [RefObject<Place | null>, number] {
  const place = useRef<Place>(null);
  const [width, setWidth] = useState(NARROW);
  useLayoutEffect(() => {
    const element = place.current;
    if (element === null) return undefined;
    const measure = (): void => setWidth(Math.max(NARROWEST, Math.floor(element.clientWidth)));
    measure();
    const watcher = new ResizeObserver(measure);
    watcher.observe(element);
    return () => watcher.disconnect();
  }, []);
  return [place, width];
}
