// Chromium: the panel is the browser's side panel.
import { base, openingKey } from './base.ts';

/** `sidePanel.open` came with 116. */
const oldest = '116';

export const chromiumManifest: chrome.runtime.ManifestV3 = {
  ...base,
  minimum_chrome_version: oldest,
  permissions: ['storage', 'unlimitedStorage', 'sidePanel'],
  background: { service_worker: 'background.js' },
  side_panel: { default_path: 'panel.html' },
  commands: { _execute_action: { suggested_key: openingKey } },
};

export const chromiumTarget = `chrome${oldest}`;
