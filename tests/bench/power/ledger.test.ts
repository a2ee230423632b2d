// Contract of the ledger and of the count of kills: what is missing is named, a logbook that was brought back stands whole in place of the
// old one or not at all, and a count that was cut off is read as far as it goes.
import { appendFileSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { removeFolder, temporaryFolder } from '../../e2e/temporary.ts';
import type { Kept } from './kept.ts';
import { createLedger, type Fact } from './ledger.ts';
import { addKill, readKills, type Kill } from './record.ts';

const keptWith = (...keys: readonly string[]): Kept => ({
  local: Object.fromEntries(keys.map((key) => [key, 1])),
  synced: {},
  copies: [],
  taught: [],
  crops: [],
});
const there = (key: string, of: Fact['of'] = 'logbook'): Fact => ({ what: key, of, isIn: ({ local }) => key in local });

test('what was acknowledged and is gone is named, and so is what was put aside', () => {
  const ledger = createLedger();
  ledger.hold(there('one'));
  ledger.hold(there('two'));
  expect(ledger.lost(keptWith('one', 'two'))).toEqual([]);
  expect(ledger.lost(keptWith('two', 'set-aside:kit:1'))).toEqual(['one', 'put aside: set-aside:kit:1']);
});

test('what is spoilt is named with its field', () => {
  const spoilt = { ...keptWith(), local: { 'entry:e': { id: 'e', value: 'many' } } };
  expect(createLedger().lost(spoilt)).toEqual([expect.stringMatching(/^“entry:e” is spoilt at /)]);
});

test('an older store that the panel has not met yet is not spoilt', () => {
  const older = JSON.parse(readFileSync('tests/fixtures/store-1.json', 'utf8')) as Kept['local'];
  expect(createLedger().lost({ ...keptWith(), local: older })).toEqual([]);
});

test('what is undone by hand is no longer held', () => {
  const ledger = createLedger();
  ledger.hold(there('one'));
  ledger.drop((name) => name === 'one');
  expect([ledger.standing(), ledger.lost(keptWith())]).toEqual([0, []]);
});

test('a copy on its way leaves the old logbook or the new, and what lies beside it in any case', () => {
  const begun = () => {
    const ledger = createLedger();
    ledger.hold(there('old'));
    ledger.hold(there('word', 'beside'));
    ledger.mayBecome([there('new')]);
    return ledger;
  };
  expect(begun().lost(keptWith('old', 'word'))).toEqual([]);
  expect(begun().lost(keptWith('new', 'word'))).toEqual([]);
  expect(begun().lost(keptWith('new'))).toEqual(['word']);
  expect(begun().lost(keptWith('word'))).toEqual(['old']);
  const brought = begun();
  brought.became();
  expect(brought.lost(keptWith('old', 'word'))).toEqual(['new']);
});

test('after a start that found the old logbook, the new one is no longer taken for it', () => {
  const ledger = createLedger();
  ledger.hold(there('old'));
  ledger.mayBecome([there('new')]);
  ledger.lost(keptWith('old'));
  expect(ledger.lost(keptWith('new'))).toEqual(['old']);
});

const KILL: Kill = {
  kill: 1,
  seed: 7,
  browser: 'chromium',
  work: 'sweep',
  cut: { from: 'press', count: 1, after: 3 },
  acknowledged: 2,
  standing: 5,
  lost: [],
  stuck: null,
  build: 'b',
};

test('kills are counted on after a line that was cut off', () => {
  const folder = temporaryFolder();
  onTestFinished(() => removeFolder(folder));
  const file = join(folder, 'kept', 'power.jsonl');
  expect(readKills(file)).toEqual([]);
  addKill(file, KILL);
  appendFileSync(file, '{"kill":2,"se');
  addKill(file, { ...KILL, kill: 3 });
  expect(readKills(file).map(({ kill }) => kill)).toEqual([1, 3]);
});
