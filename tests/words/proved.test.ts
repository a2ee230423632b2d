// Contract of what photographs showed in one line: what came out, by which pictures, and the figures it rests on.
import { expect, test } from 'vitest';
import type { Proof } from '../../src/photographs/proof.ts';
import { around } from '../../src/photographs/withInterval.ts';
import { moment, steps } from '../../src/units.ts';
import { words } from '../../src/words/catalogue.ts';
import { libraryWith } from '../logbook/libraryWith.ts';

const DEPTH = { front: 40, behind: 44 };
const check: Proof = {
  is: 'check',
  taken: null,
  correction: steps(-4),
  shots: 6,
  reference: true,
  bias: around(-12.4, 3),
  repeatability: 2,
  nearLessFar: around(-3, 1),
  depth: DEPTH,
  verdict: { is: 'shifted', lies: 'in front' },
};
const bracket: Proof = {
  is: 'bracket',
  taken: moment(86_400_000),
  shots: [],
  reference: null,
  step: around(3.06, 0.2),
  centre: around(7.04, 0.31),
  scatter: 1,
  atZero: -21,
  joined: null,
};

function lineOf(proof: Proof): readonly string[] {
  const [record] = libraryWith({ proofs: [{ id: 'p', at: moment(0), proof }] }).proofs;
  const say = words('situation').history.photographed;
  return [say.showed(record!), say.by(record!), say.facts(record!)];
}

test('one picture is sharp or not, and says where focus fell', () => {
  expect(lineOf({ is: 'one', taken: null, error: around(12, 3), depth: DEPTH, sharp: 'not sharp' })).toEqual([
    'not sharp',
    'in one picture, 1\u00a0Jan\u00a01970',
    'focus fell 12\u00a0mm ± 3\u00a0mm behind the target',
  ]);
});

test('a check names its value and its verdict, and says what it lacked', () => {
  expect(lineOf(check)).toEqual([
    '−4 shifted',
    'in a check with 6 shots, 1\u00a0Jan\u00a01970',
    'focus falls 12\u00a0mm ± 3\u00a0mm in front of the target · shots scatter by 2\u00a0mm · near less far −3\u00a0mm',
  ]);
  expect(lineOf({ ...check, shots: 1, reference: false, nearLessFar: null, verdict: { is: 'not enough', more: 2 } })).toEqual([
    '−4 not sure',
    'in a check with 1 shot, 1\u00a0Jan\u00a01970',
    'focus falls 12\u00a0mm ± 3\u00a0mm in front of the target · shots scatter by 2\u00a0mm · without a shot in live view',
  ]);
});

test('a bracket says its centre and what a step is worth, dated by its pictures, and how it stands to the band', () => {
  const alone = lineOf(bracket);
  expect(alone).toEqual([
    'centre +7',
    'in a bracket of 0 shots, 2\u00a0Jan\u00a01970',
    '95% between +6.7 and +7.4 · one step moves focus by 3.1\u00a0mm · shots scatter by 1\u00a0mm',
  ]);
  const beside = { band: around(7, 1), difference: around(0, 1) };
  expect(lineOf({ ...bracket, joined: { is: 'agree', ...beside, joint: around(7, 0.3) } })[2]).toContain(
    'agrees with the band’s centre, together +7 (95% between +6.7 and +7.3)',
  );
  expect(lineOf({ ...bracket, joined: { is: 'differ', ...beside } })[2]).toContain('differs from the band’s centre, +7');
});
