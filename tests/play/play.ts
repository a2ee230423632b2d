// Opens the built extension for a person who wants to try it: in a window where there is a screen.
import { launchChromium } from '../e2e/chromium.ts';
import { picture } from '../e2e/screens.ts';

const hasScreen =
  process.platform !== 'linux' || Boolean(process.env['DISPLAY']) || Boolean(process.env['WAYLAND_DISPLAY']);

const chromium = await launchChromium({ headful: hasScreen, audible: hasScreen, throttled: hasScreen });
const panel = await chromium.openPanel();
if (hasScreen) {
  console.log('The panel is open beside the page. Close the browser window to end.');
  await new Promise((closed) => chromium.browser.once('disconnected', closed));
} else {
  console.log(`No screen here. The panel as it looks: ${await picture(panel, 'try')}`);
  await chromium.close();
}
