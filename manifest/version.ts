// What a new version changes in the project's files, as texts: the two that npm keeps, and the heading of what has changed.

export interface VersionedFiles {
  readonly packageJson: string;
  readonly lockfile: string;
  readonly changelog: string;
}

const UNRELEASED = '## Unreleased\n';
/** What both stores take. */
const VERSION = /^(0|[1-9]\d{0,4})\.(0|[1-9]\d{0,4})\.(0|[1-9]\d{0,4})$/;

/** `day`: as year-month-day. Throws a sentence for the person where this cannot be the next version. */
export function versionedTo(version: string, day: string, { packageJson, lockfile, changelog }: VersionedFiles): VersionedFiles {
  const now = (JSON.parse(packageJson) as { version: string }).version;
  if (!VERSION.test(version)) throw new Error(`"${version}" is no version. Write three numbers, such as 1.2.0.`);
  if (!isHigher(version, now)) throw new Error(`${version} is not higher than ${now}.`);
  const [before, notes] = changelog.split(UNRELEASED);
  if (before === undefined || !/^\s*[^\s#]/.test(notes ?? ''))
    throw new Error('Nothing stands under "Unreleased" in CHANGELOG.md. Write down what has changed first.');
  const lock = JSON.parse(lockfile) as { version: string; packages: Record<string, { version: string }> };
  const own = lock.packages[''];
  if (own === undefined) throw new Error('package-lock.json does not name this project. Run npm install first.');
  lock.version = version;
  own.version = version;
  return {
    packageJson: packageJson.replace(`"version": "${now}"`, `"version": "${version}"`),
    lockfile: `${JSON.stringify(lock, null, 2)}\n`,
    changelog: `${before}${UNRELEASED}\n## ${version}, ${day}\n${notes ?? ''}`,
  };
}

function isHigher(version: string, now: string): boolean {
  const [own, other] = [version, now].map((text) => text.split('.').map(Number));
  const part = own?.findIndex((number, index) => number !== other?.[index]) ?? -1;
  return part >= 0 && (own?.[part] ?? 0) > (other?.[part] ?? 0);
}
