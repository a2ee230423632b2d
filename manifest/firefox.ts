// Firefox: the panel is a sidebar, and the background is an event page in place of a service worker.
import type { Manifest } from 'webextension-polyfill';
import { base, openingKey } from './base.ts';

/** The first version that tells the person what an add-on collects, which here is nothing, on every system. */
const oldest = '142';

/**
 * By this Firefox knows the add-on for good: its storage and its updates hang on it. It names no domain, since the project has none. Chromium's
 * store gives an id of its own.
 */
export const firefoxAddOnId = '{2439a256-79a3-4f34-9966-a8f116d47ee8}';

export const firefoxManifest: Manifest.WebExtensionManifest = {
  ...base,
  permissions: ['storage', 'unlimitedStorage'],
  background: { scripts: ['background.js'] },
  sidebar_action: {
    default_title: '__MSG_name__',
    default_panel: 'panel.html',
    default_icon: { 16: 'icons/16.png', 32: 'icons/32.png' },
    open_at_install: false,
  },
  commands: { _execute_sidebar_action: { suggested_key: openingKey } },
  browser_specific_settings: {
    gecko: {
      id: firefoxAddOnId,
      strict_min_version: `${oldest}.0`,
      data_collection_permissions: { required: ['none'] },
    },
  },
};

export const firefoxTarget = `firefox${oldest}`;
