// Whether keys reach this panel. One click in the web page and they go there, while the panel stays in sight. The browsers
// tell of it at once by focus and blur of the window; a panel that is hidden gets no keys either.
export interface KeyboardFocus {
  isHere(): boolean;
  /** Until the returned function is called. */
  onChange(listener: () => void): () => void;
}

export const keyboardFocus: KeyboardFocus = {
  isHere: () => document.hasFocus() && document.visibilityState === 'visible',
  onChange(listener) {
    const ended = new AbortController();
    const { signal } = ended;
    window.addEventListener('focus', listener, { signal });
    window.addEventListener('blur', listener, { signal });
    document.addEventListener('visibilitychange', listener, { signal });
    return () => ended.abort();
  },
};
