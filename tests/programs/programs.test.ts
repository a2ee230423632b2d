import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { ALL, missing, program, whatIsMissing } from './programs.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'programs-'));
  vi.stubEnv('PATH', folder);
});
afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(folder, { recursive: true });
});

function put(command: string, mode = 0o755): void {
  writeFileSync(join(folder, command), '');
  chmodSync(join(folder, command), mode);
}

test('on a bare machine everything is missing, and one sentence names all of it with its packages', () => {
  expect(missing(ALL)).toEqual(ALL);
  const sentence = whatIsMissing(missing(ALL));
  for (const name of ALL) expect(sentence).toContain(name);
  expect(sentence).toContain('apt-get install chromium firefox-esr espeak-ng pulseaudio pulseaudio-utils openssl fonts-ipafont-gothic');
  expect(sentence).not.toContain('\n');
});

test('a program is found by any of its commands', () => {
  put('chromium-browser');
  expect(program('chromium')).toBe(join(folder, 'chromium-browser'));
  expect(missing(['chromium', 'openssl'])).toEqual(['openssl']);
});

test('a font is there when fontconfig lists one for its language', () => {
  writeFileSync(join(folder, 'fc-list'), '#!/bin/sh\n[ "$1" = :lang=ja ] && echo /fonts/gothic.ttf\n', { mode: 0o755 });
  expect(program('a Japanese font')).toBe('/fonts/gothic.ttf');
  writeFileSync(join(folder, 'fc-list'), '#!/bin/sh\n');
  expect(missing(['a Japanese font'])).toEqual(['a Japanese font']);
});

test('a file that cannot be run is not the program', () => {
  put('openssl', 0o644);
  expect(missing(['openssl'])).toEqual(['openssl']);
});

test('what drives a missing program fails with the sentence, and nothing is installed', () => {
  expect(() => program('firefox')).toThrow(whatIsMissing(['firefox']));
});
