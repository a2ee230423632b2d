// Whether keys reach this panel. One click in the web page and they go there, while the panel stays in sight. The browsers
// tell of it at once by focus and blur of the window; a panel that is hidden gets no keys either.
export interface KeyboardFocus {
  isHere(): boolean;
  onChange(listener: () => void): void;
}

export const keyboardFocus: KeyboardFocus = {
  isHere: () => document.hasFocus() && document.visibilityState === 'visible',
  onChange(listener) {
    window.addEventListener('focus', listener);
    window.addEventListener('blur', listener);
    document.addEventListener('visibilitychange', listener);
  },
};
