// Mozilla's linter on both builds. Anything it says fails, but for what is named here with its reason.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

type Message = { _type: string; code: string; message: string; file?: string; line?: number };
type Report = { errors: Message[]; warnings: Message[]; notices: Message[] };
type Browser = 'firefox' | 'chromium';

/** preact sets innerHTML where a component asks for dangerouslySetInnerHTML; none of ours does. Each bundle has its own preact. */
const isPreact = ({ code, file = '' }: Message, folder: string): boolean => {
  if (code !== 'UNSAFE_VAR_ASSIGNMENT') return false;
  const assigned = readFileSync(join(folder, file), 'utf8').match(/\.(innerHTML|outerHTML)\s*\+?=(?!=)[^;,)]*/g) ?? [];
  return assigned.length === 1 && /^\.innerHTML=\w+\.__html$/.test(assigned[0] ?? '');
};

/** What Firefox alone asks of a manifest, or alone does not know. The rest of what the linter looks for holds in Chromium, too. */
const FOR_FIREFOX_ALONE = ['ADDON_ID_REQUIRED', 'BACKGROUND_SERVICE_WORKER_NOFALLBACK', 'MISSING_DATA_COLLECTION_PERMISSIONS'];
const isForFirefoxAlone = ({ code, message }: Message, browser: Browser): boolean =>
  browser === 'chromium' &&
  (FOR_FIREFOX_ALONE.includes(code) || (code === 'MANIFEST_PERMISSIONS' && /^\/permissions: Invalid permissions "sidePanel" at \d+\.$/.test(message)));

function faultsOf(browser: Browser): Message[] {
  const folder = `dist/${browser}`;
  const run = spawnSync('node_modules/.bin/web-ext', ['lint', '--source-dir', folder, '--output', 'json'], { encoding: 'utf8' });
  const report = JSON.parse(run.stdout) as Report;
  return [...report.errors, ...report.warnings, ...report.notices].filter((said) => !isPreact(said, folder) && !isForFirefoxAlone(said, browser));
}

for (const browser of ['firefox', 'chromium'] as const) {
  const faults = faultsOf(browser);
  for (const { _type: kind, code, message, file = '', line = 0 } of faults) console.error(`${kind} ${code} ${file}:${line} ${message}`);
  console.log(faults.length === 0 ? `add-on lint, ${browser}: clean` : `add-on lint, ${browser}: ${faults.length} to mend`);
  if (faults.length > 0) process.exitCode = 1;
}
