// The programs that the tests, the bench and `npm run try` drive, and the font without which Japanese is drawn as boxes: where they are,
// and what Debian calls them. Nothing is installed here: what is missing is a failure with a sentence that names it, never a reason to skip a test.
import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const programs = {
  chromium: { commands: ['chromium', 'chromium-browser'], debian: 'chromium' },
  firefox: { commands: ['firefox-esr', 'firefox'], debian: 'firefox-esr' },
  'espeak-ng': { commands: ['espeak-ng'], debian: 'espeak-ng' },
  pulseaudio: { commands: ['pulseaudio'], debian: 'pulseaudio' },
  paplay: { commands: ['paplay'], debian: 'pulseaudio-utils' },
  openssl: { commands: ['openssl'], debian: 'openssl' },
  'a Japanese font': { language: 'ja', debian: 'fonts-ipafont-gothic' },
} as const;

export type Program = keyof typeof programs;

export const ALL = Object.keys(programs) as Program[];

/** Its path. Throws a sentence for the person where it is missing. */
export function program(name: Program): string {
  const path = pathOf(name);
  if (path === undefined) throw new Error(whatIsMissing([name]));
  return path;
}

export const missing = (names: readonly Program[]): Program[] => names.filter((name) => pathOf(name) === undefined);

export const packagesOf = (names: readonly Program[]): string[] => names.map((name) => programs[name].debian);

/** One sentence that names all of them, and how they are installed. */
export function whatIsMissing(names: readonly Program[]): string {
  return (
    `Missing here: ${names.join(', ')}. Install ${names.length === 1 ? 'it' : 'them'}, then run this again; ` +
    `on Debian, as root: apt-get update && apt-get install ${packagesOf(names).join(' ')}`
  );
}

function pathOf(name: Program): string | undefined {
  const wanted = programs[name];
  return 'language' in wanted ? fontFor(wanted.language) : found(wanted.commands);
}

function found(commands: readonly string[]): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  return commands.flatMap((command) => folders.map((folder) => join(folder, command))).find(isExecutable);
}

/** As fontconfig lists them, which the browsers ask, too. */
function fontFor(language: string): string | undefined {
  const lister = found(['fc-list']);
  if (lister === undefined) return undefined;
  return spawnSync(lister, [`:lang=${language}`, '--format', '%{file}\n'], { encoding: 'utf8' })
    .stdout.split('\n')
    .find((file) => file !== '');
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
