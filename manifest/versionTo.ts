// `npm run version-to -- 0.2.0`: the next version in every file that names one (the browsers' manifests take theirs from package.json), and
// the commands that put it on record.
import { readFile, writeFile } from 'node:fs/promises';
import { versionedTo } from './version.ts';

const FILES = { packageJson: 'package.json', lockfile: 'package-lock.json', changelog: 'CHANGELOG.md' } as const;

const now = {
  packageJson: await readFile(FILES.packageJson, 'utf8'),
  lockfile: await readFile(FILES.lockfile, 'utf8'),
  changelog: await readFile(FILES.changelog, 'utf8'),
};
const version = process.argv[2] ?? '';
try {
  const changed = versionedTo(version, new Date().toISOString().slice(0, 10), now);
  await writeFile(FILES.packageJson, changed.packageJson);
  await writeFile(FILES.lockfile, changed.lockfile);
  await writeFile(FILES.changelog, changed.changelog);
  console.log(`Version ${version} stands in ${Object.values(FILES).join(', ')}. Look at them, run npm test, then:\n`);
  console.log(`  git commit -m "Version ${version}" -- ${Object.values(FILES).join(' ')}`);
  console.log(`  git tag -a v${version} -m "Version ${version}"`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
