// A store of an older version that the panel meets when it opens: it is brought to the newest, and nothing of it is lost.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { canonical } from '../../../../src/logbook/canonical.ts';
import { KEY } from '../../../../src/logbook/keys.ts';
import { migrate } from '../../../../src/logbook/migrations.ts';
import { VERSION, type Stored } from '../../../../src/logbook/stored.ts';
import type { Fact } from '../ledger.ts';
import type { Life, Work } from '../work.ts';
import { settled } from './ways.ts';

/** Of version 2 everything stays as it lies there but its version. */
const OLDER = [1, 2] as const;
const storeOf = (version: number): Stored => JSON.parse(readFileSync(join('tests', 'fixtures', `store-${version}.json`), 'utf8')) as Stored;
const olderOf = ({ number }: Life): number => OLDER[number % OLDER.length] ?? 1;

export const migration: Work = {
  name: 'migration',
  desk: 'older store',
  lasts: 1200,
  presses: 0,
  acknowledges: 2,
  async before(life, beside) {
    const stored = storeOf(olderOf(life));
    life.ledger.drop(() => true);
    await beside.evaluate(async (all) => {
      const { local } = ((globalThis as { browser?: typeof chrome }).browser ?? chrome).storage;
      await local.clear();
      await local.set(all);
    }, stored);
    for (const fact of everythingOf(stored)) life.ledger.hold(fact);
  },
  async go(life, seat) {
    await settled(seat);
    const from = Number(storeOf(olderOf(life))[KEY.version]);
    life.acknowledged({ what: `version ${VERSION}`, of: 'logbook', isIn: ({ local }) => local[KEY.version] === VERSION });
    life.acknowledged({
      what: `copy from before version ${VERSION}`,
      of: 'beside',
      isIn: ({ copies }) => copies.some(({ why, keys }) => why === 'before a migration' && Object.keys(storeOf(from)).every((key) => keys.includes(key))),
    });
  },
};

/** Each key as it was or as it is in the newest version, and all of them of one version. */
function everythingOf(stored: Stored): readonly Fact[] {
  const migrated = migrate(stored);
  const after = migrated.is === 'changed' ? migrated.stored : stored;
  return Object.keys(stored)
    .filter((key) => key !== KEY.version && key !== KEY.live)
    .map((key) => ({
      what: `${key} of version ${String(stored[KEY.version])}`,
      of: 'logbook',
      isIn: ({ local }) => canonical(local[key]) === canonical(local[KEY.version] === VERSION ? after[key] : stored[key]),
    }));
}
