// Contract of a new version: every file that names one names the new one, nothing else in them changes, and a slip is refused with a sentence.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { versionedTo, type VersionedFiles } from '../../manifest/version.ts';
import { base } from '../../manifest/base.ts';

const text = (path: string): string => readFileSync(path, 'utf8');
/** npm's own, at another version. */
function lockfileAt(version: string): string {
  const lock = JSON.parse(text('package-lock.json')) as { version: string; packages: Record<string, { version: string }> };
  lock.version = version;
  lock.packages[''] = { ...lock.packages[''], version };
  return `${JSON.stringify(lock, null, 2)}\n`;
}

const project: VersionedFiles = {
  packageJson: text('package.json').replace(/"version": "[^"]+"/, '"version": "0.1.0"'),
  lockfile: lockfileAt('0.1.0'),
  changelog: '# What has changed\n\n## Unreleased\n\n- More.\n\n## 0.1.0\n\nThe first version.\n',
};

const changedLines = (before: string, after: string): [string, string][] => {
  const lines = after.split('\n');
  return before.split('\n').flatMap((line, index) => (line === lines[index] ? [] : [[line.trim(), lines[index]?.trim() ?? ''] as [string, string]]));
};

test('the next version stands in package.json and twice in the lockfile, and nothing else changes there', () => {
  const { packageJson, lockfile } = versionedTo('0.2.0', '2026-12-01', project);
  expect(changedLines(project.packageJson, packageJson)).toEqual([['"version": "0.1.0",', '"version": "0.2.0",']]);
  expect(changedLines(project.lockfile, lockfile)).toEqual([
    ['"version": "0.1.0",', '"version": "0.2.0",'],
    ['"version": "0.1.0",', '"version": "0.2.0",'],
  ]);
});

test('what stood under "Unreleased" stands under the version and its day, below an empty heading', () => {
  expect(versionedTo('0.2.0', '2026-12-01', project).changelog).toBe(
    '# What has changed\n\n## Unreleased\n\n## 0.2.0, 2026-12-01\n\n- More.\n\n## 0.1.0\n\nThe first version.\n',
  );
});

test.each([
  ['v0.2.0', '"v0.2.0" is no version. Write three numbers, such as 1.2.0.'],
  ['0.2', '"0.2" is no version. Write three numbers, such as 1.2.0.'],
  ['', '"" is no version. Write three numbers, such as 1.2.0.'],
  ['0.1.0', '0.1.0 is not higher than 0.1.0.'],
  ['0.0.9', '0.0.9 is not higher than 0.1.0.'],
])('"%s" is refused', (version, why) => {
  expect(() => versionedTo(version, '2026-12-01', project)).toThrow(why);
});

test('numbers are compared as numbers', () => {
  const later = { ...project, packageJson: project.packageJson.replace('"0.1.0"', '"0.9.0"') };
  expect(versionedTo('0.10.0', '2026-12-01', later).packageJson).toContain('"version": "0.10.0"');
});

test('a version without anything that has changed is refused', () => {
  for (const notes of ['', '\n'])
    expect(() => versionedTo('0.2.0', '2026-12-01', { ...project, changelog: `## Unreleased\n${notes}## 0.1.0\n` })).toThrow(
      'Nothing stands under "Unreleased"',
    );
});

test('the lockfile is written as npm writes it', () => {
  const { version } = JSON.parse(text('package.json')) as { version: string };
  expect(lockfileAt(version)).toBe(text('package-lock.json'));
});

test('the list of changes, the manifests and the lockfile speak of the version in package.json', () => {
  const { version } = JSON.parse(text('package.json')) as { version: string };
  const lock = JSON.parse(text('package-lock.json')) as { version: string; packages: Record<string, { version: string }> };
  expect([base.version, lock.version, lock.packages['']?.version]).toEqual([version, version, version]);
  expect(text('CHANGELOG.md')).toMatch(/^## Unreleased\n/m);
  expect(text('CHANGELOG.md')).toContain(`\n## ${version}`);
});
