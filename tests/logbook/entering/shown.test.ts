// Contract of what photographs say of the value to enter: the newest bracket beside the band, together where they agree; the newest check that
// could tell; and nothing of what the practice camera showed.
import { expect, it } from 'vitest';
import { USUAL_LIMITS } from '../../../src/logbook/due.ts';
import { adviceOnEntering } from '../../../src/logbook/entering/advice.ts';
import { shelfOf } from '../../../src/logbook/shelf.ts';
import { around, type WithInterval } from '../../../src/photographs/withInterval.ts';
import { words } from '../../../src/words/catalogue.ts';
import { libraryWith, sweepRecord, T0 } from '../libraryWith.ts';

const SUBJECT = { situation: 's', body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: 85, distance: 4250 };
const record = (id: string, proof: object, rest: object = {}) => ({ id, at: T0, practice: false, subject: SUBJECT, proof, crops: null, ...rest });
const bracket = (centre: WithInterval) => ({
  is: 'bracket',
  taken: T0,
  shots: [],
  reference: null,
  step: around(6, 1),
  centre,
  scatter: 1,
  atZero: 0,
  joined: null,
});
const check = (correction: number, verdict: object) => ({
  is: 'check',
  taken: T0,
  correction,
  shots: 6,
  reference: true,
  bias: around(-12, 3),
  repeatability: 2,
  nearLessFar: null,
  depth: { front: 40, behind: 44 },
  verdict,
});

function place(proofs: readonly ReturnType<typeof record>[], records: readonly unknown[] = [sweepRecord('r', T0, 1, 5, { subject: SUBJECT })]) {
  const library = libraryWith({
    bodies: [{ id: 'b' }],
    lenses: [{ id: 'l' }],
    situations: [{ id: 's', focalLength: 85, distance: 4250 }],
    records,
    proofs,
  });
  const shelf = shelfOf(library, { at: T0, temperature: null }, USUAL_LIMITS);
  const [only] = adviceOnEntering({ body: 'b', lens: 'l' }, library.kit, shelf, { by: 'worst share' })?.places ?? [];
  if (!only) throw new Error('Its place is there.');
  return only;
}
const said = ({ shown }: ReturnType<typeof place>): string => shown.map((there) => words('entering').shown.bracket(there).join(' ')).join(' ');

it('a bracket that agrees with the band counts with it: the joint centre says what to enter', () => {
  const even = [sweepRecord('r', T0, 1, 6, { subject: SUBJECT })];
  expect(place([], even).one?.value).toBe(3);
  const joined = place([record('p', bracket(around(3.9, 0.2)))], even);
  expect(joined.evidence[0]?.band.centre).toBeCloseTo(3.85, 1);
  expect(joined.one?.value).toBe(4);
  expect(joined.one?.fits.map(words('entering').off)).toEqual(['+0.2']);
  expect(said(joined)).toMatch(
    /^85\u00a0mm at 4\.25\u00a0m: the bracket of .* puts the centre at \+3\.9 .* That agrees with the band’s centre, \+3\.5\. Together they give \+3\.8 .*, which counts here\.$/,
  );
});

it('a bracket that differs from the band changes no value, and says by how much', () => {
  const differing = place([record('p', bracket(around(12, 0.5)))]);
  expect(differing.one?.value).toBe(3);
  expect(said(differing)).toMatch(/That differs from the band’s centre, \+3, by \+9 ± [\d.]+ steps, so the band counts alone\. Check the set-up/);
});

it('of several brackets the newest counts, and of checks the newest that could tell', () => {
  const { shown } = place([
    record('1', bracket(around(12, 0.5))),
    record('2', bracket(around(3, 0.5)), { at: T0 + 1 }),
    record('3', check(3, { is: 'shifted', lies: 'in front' }), { at: T0 + 2 }),
    record('4', check(4, { is: 'confirmed' }), { at: T0 + 3 }),
    record('5', check(5, { is: 'not enough', more: 2 }), { at: T0 + 4 }),
  ]);
  expect(shown).toMatchObject([{ bracket: { is: 'agree', centre: { value: 3 } }, check: { correction: 4, found: 'confirmed' } }]);
});

it('a check is said with the value it was of: confirmed, or shifted and to which side', () => {
  const [confirmed] = place([record('p', check(3, { is: 'confirmed' }))]).shown;
  expect(words('entering').shown.check(confirmed!)).toMatch(/^85\u00a0mm at 4\.25\u00a0m: the check of .*\d confirmed \+3\.$/);
  const [shifted] = place([record('p', check(3, { is: 'shifted', lies: 'in front' }))]).shown;
  expect(words('entering').shown.check(shifted!)).toMatch(/found a shift with \+3: focus falls 12\u00a0mm ± 3\u00a0mm in front of the target\.$/);
});

it('without a band, one bracket says what to enter on its own, if the scale reaches that far', () => {
  const past = { found: 'past the limit', side: 'high', visible: 14, bound: 17, interval: { from: 17, to: 22 }, tally: { holds: 9, seconds: 90 } };
  const records = [sweepRecord('r', T0, 0, 0, { subject: SUBJECT, outcome: past })];
  expect(place([record('p', bracket(around(17.2, 1)))], records)).toMatchObject({ one: null, byPictures: { value: 17, subject: { situation: 's' } } });
  const off = place([record('p', bracket(around(24, 1)))], records);
  expect(off.byPictures).toBeNull();
  expect(said(off)).toContain('It lies off the scale.');
});

it('a band that was put in by hand has no interval, so the bracket stands beside it and the value stays', () => {
  const byHand = { id: 'h', at: T0, subject: SUBJECT, source: 'by hand', finding: { known: 'band', low: 1, high: 5, chosen: 3 }, conditions: CONDITIONS };
  const library = libraryWith({
    bodies: [{ id: 'b' }],
    lenses: [{ id: 'l' }],
    situations: [{ id: 's', focalLength: 85, distance: 4250 }],
    byHand: [byHand],
    proofs: [record('p', bracket(around(9, 1)))],
  });
  const shelf = shelfOf(library, { at: T0, temperature: null }, USUAL_LIMITS);
  const [beside] = adviceOnEntering({ body: 'b', lens: 'l' }, library.kit, shelf, { by: 'worst share' })?.places ?? [];
  expect(beside).toMatchObject({ one: { value: 3 }, byPictures: null, shown: [{ bracket: { is: 'alone', value: 9 } }] });
});

it('what the practice camera showed says nothing of a real value', () => {
  expect(place([record('p', bracket(around(12, 0.5)), { practice: true })]).shown).toEqual([]);
});

const CONDITIONS = { told: T0, light: null, temperature: null, firmware: null, note: null };
