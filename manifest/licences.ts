// The notices that must travel with what is bundled: of every package, its licence and whatever notice lies beside it; of data
// that came from elsewhere, the licence that lies beside its file. What is bundled without one stops the build.
import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import * as v from 'valibot';

const NOTICE = /^(licen[cs]e|copying|notice)(\.|-|$)/i;

const About = v.object({
  name: v.string(),
  version: v.string(),
  license: v.string(),
  homepage: v.optional(v.string()),
  repository: v.optional(v.union([v.string(), v.object({ url: v.string() })])),
});

/** `inputs`: the files that were bundled, relative to `root`. */
export async function licencesOf(inputs: Iterable<string>, root = '.'): Promise<string> {
  const files = [...new Set(inputs)];
  const folders = [...new Set(files.flatMap((file) => packageOf(file) ?? []))].toSorted();
  const data = files
    .filter((file) => file.endsWith('.ts'))
    .map(besideData)
    .filter((path) => existsSync(join(root, path)));
  const notices = [
    ...(await Promise.all(folders.map((folder) => packageNotice(join(root, folder))))),
    ...(await Promise.all(data.toSorted().map((path) => readFile(join(root, path), 'utf8')))),
  ];
  const own = await readFile(join(root, 'LICENSE'), 'utf8');
  return [own, ...notices].map((notice) => `${notice.trim()}\n`).join(`\n${'-'.repeat(72)}\n\n`);
}

/** `node_modules/@scope/name/dist/index.js` lies in `node_modules/@scope/name`. */
export const packageOf = (input: string): string | undefined => /^(?:[^:]*:)?(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(input)?.[1];

const besideData = (input: string): string => input.replace(/\.ts$/, '.licence.txt');

async function packageNotice(folder: string): Promise<string> {
  const about = v.safeParse(About, JSON.parse(await readFile(join(folder, 'package.json'), 'utf8')));
  const names = (await readdir(folder)).filter((name) => NOTICE.test(name)).toSorted();
  if (!about.success || names.length === 0) throw new Error(`${basename(folder)} is bundled, but says no licence or comes without its text.`);
  const { name, version, license, homepage, repository } = about.output;
  const source = typeof repository === 'object' ? repository.url.replace(/^git\+/, '') : (repository ?? homepage);
  const heading = [`${name} ${version}`, `Licence: ${license}`, ...(source === undefined ? [] : [`Source: ${source}`])];
  const texts = await Promise.all(names.map((file) => readFile(join(folder, file), 'utf8')));
  return [heading.join('\n'), ...texts.map((text) => text.replaceAll('\r\n', '\n').trim())].join('\n\n');
}
