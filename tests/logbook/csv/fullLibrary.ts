// A logbook that has something of every kind: measurements, entries, and photographs of each verdict.
import { DAY, libraryWith, sweepRecord, T0 } from '../libraryWith.ts';

const measured = (value: number) => ({ value, low: value - 1, high: value + 2 });
const depth = { front: 20, behind: 'infinite' };
const check = { is: 'check', taken: 5, correction: 3, shots: 6, reference: true, bias: measured(4), repeatability: 0.5, nearLessFar: measured(0.7), depth };
const bracket = {
  is: 'bracket',
  taken: null,
  shots: [
    { correction: 1, error: measured(1) },
    { correction: 2, error: measured(2) },
  ],
  reference: null,
  step: measured(9),
  centre: measured(2.5),
  scatter: 0.4,
  atZero: 1,
};
const PROOFS = [
  { is: 'one', taken: 7, error: measured(2), depth, sharp: 'not sure' },
  { ...check, verdict: { is: 'confirmed' } },
  { ...check, nearLessFar: null, verdict: { is: 'shifted', lies: 'behind' } },
  { ...check, verdict: { is: 'not enough', more: 2 } },
  { ...bracket, joined: null },
  { ...bracket, joined: { is: 'differ', band: measured(1), difference: measured(2) } },
];
const conditions = { told: 0, light: 8.5, temperature: -3, firmware: '1.2', note: 'a, "b"' };
export const library = libraryWith({
  bodies: [
    { id: 'b', serial: '11' },
    { id: 'b2', name: 'Velde  M2' },
  ],
  lenses: [
    { id: 'l', serial: 'L1' },
    { id: 'l2', name: 'Orrin 50', serial: null },
  ],
  converters: [{ id: 'c' }],
  situations: [{ id: 's' }, { id: 's2', lens: 'l2', converter: 'c' }],
  records: [sweepRecord('r', T0 + DAY, 1, 6)],
  byHand: [
    { id: 'h', at: T0 - DAY, conditions },
    {
      id: 'h2',
      at: T0,
      finding: { known: 'band', low: -3, high: 4, chosen: 1 },
      subject: { situation: 's2', body: 'x', lens: 'y', focalLength: 50, distance: 2500 },
    },
  ],
  entries: [
    { id: 'e', at: T0 - 5, value: 4, conditions },
    { id: 'e2', subject: { situation: 'unknown', body: 'Old body', lens: 'Old lens', focalLength: 35, distance: 1750 } },
  ],
  proofs: PROOFS.map((proof, at) => ({ id: `p${at}`, at: T0 + at, proof })),
});
