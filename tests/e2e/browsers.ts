// Finds the programs that the end-to-end tests drive. A missing one is installed on a Debian machine where we are root;
// elsewhere it is a failure that names what to install. It is never a reason to skip a test.
import { execFileSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const tools = {
  chromium: { commands: ['chromium', 'chromium-browser'], debian: 'chromium' },
  firefox: { commands: ['firefox-esr', 'firefox'], debian: 'firefox-esr' },
  'espeak-ng': { commands: ['espeak-ng'], debian: 'espeak-ng' },
  pulseaudio: { commands: ['pulseaudio'], debian: 'pulseaudio' },
  paplay: { commands: ['paplay'], debian: 'pulseaudio-utils' },
  openssl: { commands: ['openssl'], debian: 'openssl' },
} as const;

export type Tool = keyof typeof tools;

/** The path of the tool's program. Throws a sentence for the person when it is neither there nor installable. */
export function program(tool: Tool): string {
  const found = onPath(tool);
  if (found !== undefined) return found;
  if (isDebian() && process.getuid?.() === 0) install(tools[tool].debian);
  const installed = onPath(tool);
  if (installed !== undefined) return installed;
  throw new Error(`The tests need ${tool}. Install it so that the command "${tools[tool].commands[0]}" is found, then run them again.`);
}

function onPath(tool: Tool): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  const candidates = tools[tool].commands.flatMap((command) => folders.map((folder) => join(folder, command)));
  return candidates.find(isExecutable);
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function isDebian(): boolean {
  return existsSync('/etc/debian_version');
}

function install(debianPackage: string): void {
  console.error(`installing ${debianPackage} …`);
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const patient = ['-o', 'DPkg::Lock::Timeout=300', '-qq'];
  execFileSync('apt-get', [...patient, 'update'], { env, stdio: ['ignore', 2, 2] });
  execFileSync('apt-get', [...patient, 'install', '-y', debianPackage], { env, stdio: ['ignore', 2, 2] });
}
