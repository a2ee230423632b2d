// Backups that come in, each with records and words that nothing else has: all of it or nothing, and a copy of how it was before.
import { writeBackup } from '../../../../src/logbook/backup/backup.ts';
import { PREFIX, recordKey } from '../../../../src/logbook/keys.ts';
import type { Library } from '../../../../src/logbook/library.ts';
import { moment } from '../../../../src/units.ts';
import { ownWordsOf, type Take } from '../../../../src/voice/ownWords/take.ts';
import { libraryWith, sweepRecord, T0 } from '../../../logbook/libraryWith.ts';
import { giveBytes } from '../../../e2e/pictureFiles.ts';
import type { Kept } from '../kept.ts';
import type { Fact } from '../ledger.ts';
import { shows, tap } from '../shows.ts';
import type { Work } from '../work.ts';
import { toFiles, toStart } from './ways.ts';

const RECORDS = 24;
const DONE = 'Done. A copy of how it was before is kept below.';

export const importing: Work = {
  name: 'import',
  desk: 'logbook',
  lasts: 2500,
  presses: 2,
  acknowledges: 4,
  async go(life, seat) {
    await toStart(life, seat);
    await toFiles(seat);
    for (let turn = 0; ; turn += 1) {
      const name = `i${life.number}-${turn}`;
      const ids = Array.from({ length: RECORDS }, (_, index) => `${name}-${index}`);
      await giveBytes(seat, 'backup.json', new TextEncoder().encode(backupWith(ids, name)));
      await shows(seat, { text: `${RECORDS} new` });
      life.ledger.hold(wholeOrAbsent(name, ids));
      life.pressed();
      await tap(seat, 'Join it with what is here');
      await shows(seat, { text: DONE });
      life.acknowledged(broughtIn(name, ids));
      life.acknowledged(copiedBefore(life.before));
      life.acknowledged(taughtBy(name));
    }
  },
};

/** The kit is what every logbook here begins with, never changed since: whatever was changed here is later. */
const backupWith = (ids: readonly string[], word: string): string => {
  const library: Library = libraryWith({ records: ids.map((id, index) => sweepRecord(id, T0 + index, 1, 5)) });
  return writeBackup(library, moment(T0), [ownWordsOf('en-US', [takeOf(word)])]);
};

/** As short as a take may be. */
export const takeOf = (word: string): Take => ({ word, noise: Array<number>(8).fill(-120), frames: Array<number>(64).fill(-60) });

const countIn = ({ local }: Kept, ids: readonly string[]): number => ids.filter((id) => recordKey(id) in local).length;

const wholeOrAbsent = (name: string, ids: readonly string[]): Fact => ({
  what: `import ${name}, not in part`,
  of: 'logbook',
  isIn: (kept) => [0, ids.length].includes(countIn(kept, ids)),
});

const broughtIn = (name: string, ids: readonly string[]): Fact => ({
  what: `import ${name}`,
  of: 'logbook',
  isIn: (kept) => countIn(kept, ids) === ids.length,
});

/** One copy at least holds everything of the logbook that lay there when this life began. */
const copiedBefore = ({ local }: Kept): Fact => {
  const logbook = Object.keys(local).filter((key) => Object.values(PREFIX).some((prefix) => prefix !== PREFIX.proof && key.startsWith(prefix)));
  return {
    what: 'copy from before an import',
    of: 'logbook',
    isIn: ({ copies }) =>
      copies.some(({ why, keys }) => {
        const there = new Set(keys);
        return why === 'before an import' && logbook.every((key) => there.has(key));
      }),
  };
};

/** A word comes right after the logbook, in a write of its own. */
const taughtBy = (word: string): Fact => ({ what: `word ${word}`, of: 'beside', isIn: ({ taught }) => taught.includes(word) });
