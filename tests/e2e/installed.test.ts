// Contract of the packages as the stores are given them: installed from the package in a real browser, the panel opens, says its version and begins
// a sweep, and what runs are the package's own bytes. Firefox installs the file as it is. Chromium takes a packed extension only with a
// signature, which the store gives: there the package is unpacked into a folder, and the folder is installed.
import { createHash } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import JSZip from 'jszip';
import type { Page } from 'puppeteer-core';
import { expect, onTestFinished, test } from 'vitest';
import { firefoxAddOnId } from '../../manifest/firefox.ts';
import { packed } from '../../manifest/packed.ts';
import packageJson from '../../package.json' with { type: 'json' };
import { launchChromium } from './chromium.ts';
import { launchFirefox } from './firefox.ts';
import { firefoxWindow } from './firefox-window.ts';
import { choose, press, seatAt, seatAtSidebar, until, untilPhase, untilText, type Seat } from './seat.ts';
import { untilStart } from './sweeping.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

const SCRIPT = 'panel.js';

interface Handed {
  readonly file: string;
  /** What is in it, as anyone unpacks it. */
  readonly content: JSZip;
  /** The sum of the panel's script in it. */
  readonly sum: string;
  /** An empty folder beside it. */
  readonly folder: string;
}

async function handedIn(browser: 'chromium' | 'firefox'): Promise<Handed> {
  const place = temporaryFolder();
  onTestFinished(() => removeFolder(place));
  const { name, bytes } = await packed(browser, join(place, 'built'));
  const file = join(place, name);
  await writeFile(file, bytes);
  // Nothing of what it was made from is left to be installed by mistake.
  removeFolder(join(place, 'built'));
  const content = await JSZip.loadAsync(await readFile(file));
  const script = await content.file(SCRIPT)?.async('nodebuffer');
  if (script === undefined) throw new Error(`${name} holds no ${SCRIPT}.`);
  return { file, content, sum: sumOf(script), folder: join(place, 'unpacked') };
}

const sumOf = (bytes: Uint8Array | string): string => createHash('sha256').update(bytes).digest('hex');

async function unpack({ content, folder }: Handed): Promise<string> {
  for (const file of Object.values(content.files)) {
    await mkdir(dirname(join(folder, file.name)), { recursive: true });
    await writeFile(join(folder, file.name), await file.async('nodebuffer'));
  }
  return folder;
}

/** Through About, which says the version, into the first hold of a sweep. */
async function tryOut(seat: Seat): Promise<void> {
  await untilStart(seat);
  // In Firefox the keys go to the sidebar only once it was clicked.
  await seat.click('h1');
  await choose(seat, 'Settings');
  await untilText(seat, 'About Sweepbook');
  await choose(seat, 'About Sweepbook');
  await until(seat, 'its version', ({ screen, text }) => screen === 'about' && text.includes(`Version ${packageJson.version}`));
  await seat.click('[aria-label="Back"]');
  await untilText(seat, 'About Sweepbook');
  await seat.click('[aria-label="Back"]');
  await untilStart(seat);
  await choose(seat, 'Practice camera');
  await untilText(seat, 'Practise');
  // By the pointer: while Firefox starts and takes a package in, its window may take the keyboard's focus back, and Enter then presses nothing.
  await seat.click('.card > .chief');
  await untilPhase(seat, 'dialling');
  await press(seat, ' ');
  await untilPhase(seat, 'holding');
}

/** The scripts of this name that a page of Chromium has run, by their sums. */
async function sumsRunIn(panel: Page, name: string): Promise<string[]> {
  const session = await panel.createCDPSession();
  const run: string[] = [];
  session.on('Debugger.scriptParsed', ({ scriptId, url }) => void (url.endsWith(`/${name}`) && run.push(scriptId)));
  await session.send('Debugger.enable');
  return Promise.all(run.map(async (scriptId) => sumOf((await session.send('Debugger.getScriptSource', { scriptId })).scriptSource)));
}

/** Runs in Firefox's own window: where the add-on lies, and the sum of one of its files as its pages get it. */
const LAID = `async (id, name) => {
  const policy = WebExtensionPolicy.getByID(id);
  const bytes = await (await fetch(policy.getURL(name))).arrayBuffer();
  const sum = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return { at: policy.extension.rootURI.spec, sum: [...sum].map((byte) => byte.toString(16).padStart(2, '0')).join('') };
}`;

test('Chromium runs the package for its store', async () => {
  const handed = await handedIn('chromium');
  const chromium = await launchChromium({ extension: await unpack(handed) });
  onTestFinished(chromium.close);
  const panel = await chromium.openPanel();
  await tryOut(seatAt(panel));
  expect(await sumsRunIn(panel, SCRIPT)).toEqual([handed.sum]);
});

test('Firefox installs and runs the package for its store', async () => {
  const handed = await handedIn('firefox');
  const firefox = await launchFirefox({ package: handed.file });
  onTestFinished(firefox.close);
  await tryOut(seatAtSidebar(await firefox.openSidebar()));
  const laid = (await (await firefoxWindow(firefox.browser)).call(LAID, firefoxAddOnId, SCRIPT)) as { at: string; sum: string };
  expect(laid.sum).toBe(handed.sum);
  expect(laid.at).toBe(`jar:file://${handed.file}!/`);
});
