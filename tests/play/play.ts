// Runs the main job for a person who wants to see it. Where there is a screen, a browser opens with the panel at the
// practice camera; where there is none, a whole practice sweep is played and told, and a bracket of pictures after it.
import { launchChromium } from '../e2e/chromium.ts';
import { seatAt, until } from '../e2e/seat.ts';
import { makeReady } from '../programs/ready.ts';
import { playPictures } from './playPictures.ts';
import { playSweep } from './playSweep.ts';

makeReady(['chromium']);

const hasScreen = process.platform !== 'linux' || Boolean(process.env['DISPLAY']) || Boolean(process.env['WAYLAND_DISPLAY']);

const chromium = await launchChromium({ headful: hasScreen, audible: hasScreen, throttled: hasScreen });
const panel = await chromium.openPanel();
await until(seatAt(panel), 'the start', ({ screen, text }) => screen === 'start' && text.includes('Practice camera'));
if (hasScreen) {
  console.log(
    'The panel is open beside the page. Press “Practise” to try a sweep, or “Practice pictures” to try the check with photographs. Close the browser window to end.',
  );
  await new Promise((closed) => chromium.browser.once('disconnected', closed));
} else {
  console.log('No screen here: a sweep of the practice camera is played by keys, judged by its light.\n');
  await playSweep(panel);
  await playPictures(panel);
  await chromium.close();
}
