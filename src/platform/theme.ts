// Which theme the pages wear: an attribute of the page, by which the styles choose their colours. It is remembered where the first script
// finds it before the first frame, as the settings are read later: a light panel must not flash up in a dark studio.

const REMEMBERED = 'theme';

/** `theme`: as the styles call it; null: as the system has it. */
export function wearTheme(theme: string | null): void {
  put(theme);
  try {
    if (theme === null) localStorage.removeItem(REMEMBERED);
    else localStorage.setItem(REMEMBERED, theme);
  } catch {
    // Without it the panel only begins in the system's theme.
  }
}

/** The theme worn last. */
export function wearRememberedTheme(): void {
  try {
    put(localStorage.getItem(REMEMBERED));
  } catch {
    // Site data may be forbidden.
  }
}

function put(theme: string | null): void {
  if (theme === null) delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = theme;
}
