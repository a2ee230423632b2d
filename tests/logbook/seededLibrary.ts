// A logbook drawn from a seed, the same for every run: two bodies of different scales, lenses as wide and not as wide, a converter, sweeps that
// came out in every way, values put in by hand, entries, notes and photographs.
import type { Library } from '../../src/logbook/library.ts';
import { seededRandom } from '../../src/practice/random.ts';
import { DAY, libraryWith, sweepRecord, T0 } from './libraryWith.ts';

const LENSES = [
  { id: 'l', name: 'Orrin 85', widest: { from: 1.8, to: 1.8 }, focal: { from: 85, to: 85 } },
  { id: 'm', name: 'Orrin 50', widest: { from: 1.8, to: 1.8 }, focal: { from: 50, to: 50 } },
  { id: 'n', name: 'Orrin 35', widest: { from: 2, to: 2 }, focal: { from: 35, to: 35 } },
  { id: 'o', name: 'Velde 24', widest: { from: 2.8, to: 2.8 }, focal: { from: 24, to: 24 } },
  { id: 'z', name: 'Orrin 24-70', widest: { from: 1.8, to: 2.8 }, focal: { from: 24, to: 70 } },
  { id: 'u', name: 'Velde', widest: null, focal: null },
];
const LIGHTS = ['steady', 'late', 'flicker', 'dark'];

export function seededLibrary(seed: number): Library {
  const random = seededRandom(seed);
  const whole = (least: number, most: number): number => least + Math.floor(random() * (most - least + 1));
  const one = <Item>(items: readonly Item[]): Item => items[whole(0, items.length - 1)] as Item;
  const situations = Array.from({ length: 18 }, (_, index) => {
    const lens = one(LENSES);
    const focalLength = lens.focal === null ? 60 : one([lens.focal.from, lens.focal.to, (lens.focal.from + lens.focal.to) / 2]);
    const retired = random() < 0.1 ? T0 : null;
    return {
      id: `s${index}`,
      body: one(['b', 'b', 'c']),
      lens: lens.id,
      converter: random() < 0.25 ? 'x' : null,
      focalLength,
      distance: one([1200, 2500, 9000]),
      retired,
    };
  });
  const subjectOf = (): object => {
    const { id, lens, focalLength, distance } = one(situations);
    return { situation: random() < 0.05 ? 'unknown' : id, body: 'Velde M1', lens, focalLength, distance };
  };
  const told = (): object => ({ told: T0, light: null, temperature: random() < 0.5 ? null : whole(-5, 35), firmware: null, note: null });
  const outcome = (low: number, high: number): object | null => {
    const tally = { holds: whole(5, 20), seconds: whole(60, 400) };
    const interval = { from: low, to: high };
    const carried = { halfWidth: 4.5, halfInterval: { from: 4, to: 5 }, within: 0.9, ends: 'seen', aside: { low: -4, high: 5 } };
    const side = one(['low', 'high']);
    switch (whole(0, 9)) {
      case 0:
        return { found: 'past the limit', side, visible: 16, bound: 18, interval, tally };
      case 1:
        return {
          ...carried,
          found: 'carried over',
          side,
          visible: random() < 0.3 ? null : low,
          centre: (low + high) / 2,
          interval,
          chosen: low,
          inside: random() < 0.6,
          service: random() < 0.3,
          tally,
        };
      case 2:
        return one([
          { found: 'nothing', tally },
          { found: 'beyond the scale', side: 'above', tally },
        ]);
      default:
        return null;
    }
  };
  const records = Array.from({ length: 34 }, (_, index) => {
    const low = whole(-6, 4);
    const high = low + whole(0, 7);
    const at = T0 + whole(0, 500) * DAY;
    const record = sweepRecord(`r${index}`, at, low, high) as { journal: readonly object[]; outcome: object };
    const holds = Array.from({ length: whole(0, 6) }, (): object[] => [
      { did: 'began', at, value: whole(-9, 12), by: 'key' },
      { did: 'judged', at, verdict: { light: one(LIGHTS), arrows: 'none' }, by: 'key', heard: null },
    ]).flat();
    const rewritten = random() < 0.15 ? [{ did: 'undid', at, by: 'key' }] : [];
    const band = {
      ...record.outcome,
      interval: { from: low + random(), to: high + 1 },
      ends: one(['seen', 'seen', 'believed']),
      other: random() < 0.5 ? low : null,
    };
    const conditions = random() < 0.6 ? { conditions: told() } : {};
    const journal = [...record.journal, ...holds, ...rewritten];
    return { ...record, subject: subjectOf(), journal, outcome: outcome(low, high) ?? band, practice: random() < 0.1, ...conditions };
  });
  const byHand = Array.from({ length: 14 }, (_, index) => {
    const [low, wide] = [whole(-6, 4), whole(0, 6)];
    const finding = random() < 0.5 ? { known: 'value', chosen: low } : { known: 'band', low, high: low + wide, chosen: low + Math.floor(wide / 2) };
    const source = one(['by hand', 'from a table', 'from another computer']);
    return { id: random() < 0.2 ? `r${index}` : `h${index}`, at: T0 + whole(0, 500) * DAY, subject: subjectOf(), source, finding, conditions: told() };
  });
  const entries = Array.from({ length: 16 }, (_, index) => ({
    id: `e${index}`,
    at: T0 + whole(0, 500) * DAY,
    subject: subjectOf(),
    value: whole(-6, 6),
    conditions: told(),
  }));
  const notes = Array.from({ length: 8 }, (_, index) => ({
    id: `n${index}`,
    at: T0 + whole(0, 500) * DAY,
    of: one(['b', 'c', 'l', 'm', 'x']),
    what: one(['firmware', 'service']),
    note: `${index}`,
  }));
  const proofs = Array.from({ length: 14 }, (_, index) => {
    const around = (value: number) => ({ value, low: value - 1.2, high: value + 1.2 });
    const depth = { front: 20, behind: 22 };
    const taken = random() < 0.5 ? T0 + whole(0, 500) * DAY : null;
    const verdict = one([{ is: 'confirmed' }, { is: 'shifted', lies: 'behind' }, { is: 'not enough', more: 3 }]);
    const check = {
      is: 'check',
      taken,
      correction: whole(-6, 6),
      shots: 8,
      reference: true,
      bias: around(3),
      repeatability: 1,
      nearLessFar: null,
      depth,
      verdict,
    };
    const bracket = { is: 'bracket', taken, shots: [], reference: null, step: around(1), centre: around(whole(-24, 24)), scatter: 1, atZero: 0, joined: null };
    return { id: `p${index}`, at: T0 + whole(0, 500) * DAY, subject: subjectOf(), practice: random() < 0.1, proof: one([check, bracket]) };
  });
  return libraryWith({
    bodies: [{ id: 'b' }, { id: 'c', name: 'Velde M2', scale: { min: -10, max: 14, step: 2 }, zoomStore: 'two' }],
    lenses: LENSES,
    converters: [{ id: 'x' }],
    situations,
    records,
    byHand,
    entries,
    notes,
    proofs,
  });
}
