// Builds dist/chromium and dist/firefox, which are what is packed and shipped; the .json beside each is not.
import { buildBrowser } from './buildBrowser.ts';

for (const browser of ['chromium', 'firefox'] as const) {
  await buildBrowser(browser, `dist/${browser}`);
  console.log(`built dist/${browser}`);
}
