// What the two browsers' manifests have in common. Permissions are the least that works: the sweep and the logbook are
// kept on this computer (`storage`) without a ceiling that thousands of records reach (`unlimitedStorage`,
// docs/decisions/unlimited-storage.md). No page is ever read.
import packageJson from '../package.json' with { type: 'json' };

/** Alt+Shift+S is among the keys both browsers really assign; Alt+Shift+A, B, C, N, P and R are silently left unassigned. */
export const openingKey = { default: 'Alt+Shift+S' };

const toolbarButton = { default_title: '__MSG_open__', default_icon: { 16: 'icons/16.png', 32: 'icons/32.png' } };

/** The panel can load only its own files and can send nothing anywhere. Images may be photographs that the person picked. */
const contentPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "media-src 'self' blob:",
  "font-src 'self'",
  "connect-src 'none'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

export const base = {
  manifest_version: 3 as const,
  name: '__MSG_name__',
  description: '__MSG_description__',
  version: packageJson.version,
  default_locale: 'en',
  icons: { 16: 'icons/16.png', 32: 'icons/32.png', 48: 'icons/48.png', 128: 'icons/128.png' },
  action: toolbarButton,
  /** The settings, as the browser's own list of extensions offers them: the panel in a tab, at that screen. */
  options_ui: { page: 'panel.html#settings', open_in_tab: true },
  /** Typed into the address bar before what is looked up. */
  omnibox: { keyword: 'sb' },
  content_security_policy: { extension_pages: contentPolicy },
};
