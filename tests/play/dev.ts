// The panel while it is worked on: a browser with it open, built and loaded again whenever a source has changed. A sweep under way goes
// on where it was, as it does for a person who closes the panel.
import { spawnSync } from 'node:child_process';
import { watch } from 'node:fs';
import { launchChromium } from '../e2e/chromium.ts';
import { makeReady } from '../programs/ready.ts';

/** An editor may write several files at once. */
const SETTLED = 150;

makeReady(['chromium']);
const hasScreen = process.platform !== 'linux' || Boolean(process.env['DISPLAY']) || Boolean(process.env['WAYLAND_DISPLAY']);
const chromium = await launchChromium({ headful: hasScreen, audible: hasScreen, throttled: hasScreen });
const page = await chromium.openTab('panel.html', { width: 360, height: 800 });
console.log('The panel is open in a tab. Change a file in src, and it is built and loaded again. Ctrl+C ends.');

let timer: ReturnType<typeof setTimeout> | undefined;
for (const folder of ['src', 'manifest']) {
  watch(folder, { recursive: true }, (_, file) => {
    clearTimeout(timer);
    timer = setTimeout(() => void again(`${folder}/${file ?? ''}`), SETTLED);
  });
}
await new Promise((closed) => chromium.browser.once('disconnected', closed));
process.exit();

async function again(changed: string): Promise<void> {
  // In a process of its own: this one keeps the sources it began with.
  const built = spawnSync('npm', ['run', 'build', '--silent'], { encoding: 'utf8' });
  if (built.status !== 0) return console.error(`${changed}\n${built.stderr}`);
  await page.reload().catch((error: unknown) => console.error(error));
  console.log(`${changed}: built and loaded again`);
}
