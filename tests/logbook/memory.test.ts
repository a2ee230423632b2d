import { describe, expect, it } from 'vitest';
import { memoryFor } from '../../src/logbook/memory.ts';
import { NO_MEMORY } from '../../src/sweep/memory.ts';
import { DAY, libraryWith, sweepRecord, T0, type Parts } from './libraryWith.ts';

const subjectOf = (situation: string) => ({
  situation,
  body: 'Velde M1',
  lens: 'Orrin',
  focalLength: 85,
  distance: 4250,
});
const swept = (id: string, situation: string, low: number, high: number, days = 0, more = {}) =>
  sweepRecord(id, T0 + days * DAY, low, high, { subject: subjectOf(situation), ...more });

const memory = (parts: Parts) => {
  const { kit, records, byHand } = libraryWith(parts);
  return memoryFor(kit.situations[0]!, [...records, ...byHand], kit);
};

describe('what the logbook brings to a sweep', () => {
  const paired = {
    situations: [{ id: 's' }, { id: 'far', distance: 9000 }, { id: 'other body', body: 'b-2' }],
    bodies: [{ id: 'b' }, { id: 'b-2' }],
  };

  it('is nothing where nothing was measured', () => {
    expect(memory({})).toEqual(NO_MEMORY);
    expect(memory({ ...paired, records: [swept('r', 'other body', 2, 9)] })).toEqual(NO_MEMORY);
    expect(memory({ records: [swept('p', 's', 2, 9, 0, { practice: true })] })).toEqual(NO_MEMORY);
  });

  it('is the newest centre of the same situation, as wide as 0.7 steps and what the sweep left open', () => {
    const { centres, halfWidth } = memory({
      ...paired,
      records: [swept('new', 's', 4, 10, 9), swept('old', 's', 2, 9), swept('far', 'far', 9, 9)],
    });
    expect(centres).toEqual([{ centre: 7, sd: expect.closeTo(Math.hypot(0.7, 0.5 / 1.96), 5), weight: 1, from: { at: T0 + 9 * DAY, of: 'situation' } }]);
    expect(halfWidth).toEqual({ median: 3.5, logSd: 0.1 });
  });

  it('is each other distance of the same pairing, less sure, where the situation itself is new', () => {
    const situations = [...paired.situations, { id: 'tele', focalLength: 200 }];
    const { centres, halfWidth } = memory({
      ...paired,
      situations,
      records: [swept('r', 'far', 2, 8), swept('t', 'tele', 4, 4)],
    });
    expect(centres.map(({ centre, weight }) => [centre, weight])).toEqual([
      [5, 0.5],
      [4, 0.5],
    ]);
    expect(centres[0]!.sd).toBeCloseTo(Math.hypot(3, 0.5 / 1.96), 5);
    expect(halfWidth).toBeNull();
  });

  it('trusts a value read off the camera less than a band', () => {
    const value = memory({ byHand: [{ id: 'h', finding: { known: 'value', chosen: -4 } }] });
    expect(value).toMatchObject({ centres: [{ centre: -4, sd: 3, weight: 1 }], halfWidth: null });
    const band = memory({ byHand: [{ id: 'h', finding: { known: 'band', low: -6, high: -3, chosen: -4 } }] });
    expect(band.centres).toMatchObject([{ centre: -4.5, sd: 0.7, weight: 1 }]);
  });

  it('knows of a band past the limit where its centre may lie', () => {
    const outcome = {
      found: 'past the limit',
      side: 'high',
      visible: 16,
      bound: 18,
      interval: { from: 18, to: 22 },
      tally: { holds: 9, seconds: 80 },
    };
    expect(memory({ records: [swept('r', 's', 0, 0, 0, { outcome })] }).centres).toMatchObject([
      { centre: 20, sd: expect.closeTo(Math.hypot(0.7, 2 / 1.96), 5), weight: 1 },
    ]);
  });

  it('is where both ends were, where the last sweep saw them, and that the value to enter itself held', () => {
    expect(memory({ records: [swept('new', 's', 4, 10, 9), swept('old', 's', 2, 9)] }).ends).toEqual({ low: 4, high: 10 });
    const record = swept('r', 's', 2, 6) as { outcome: object; journal: readonly object[] };
    const held = (value: number, light: string) => [
      { did: 'began', at: T0, value, by: 'key' },
      { did: 'judged', at: T0, verdict: { light, arrows: 'none' }, by: 'key', heard: null },
    ];
    const proven = (...more: readonly object[]) => memory({ records: [{ ...record, journal: [...record.journal, ...more] }] }).ends;
    expect(proven(...held(3, 'steady'), ...held(4, 'steady'))).toEqual({ low: 2, high: 6, proven: 4 });
    expect(proven(...held(4, 'late'))).toEqual({ low: 2, high: 6 });
    expect(proven(...held(4, 'steady'), { did: 'undid', at: T0, by: 'key' })).toEqual({ low: 2, high: 6 });
  });

  it('knows of no ends that were only believed, or that a hand wrote down', () => {
    const believed = swept('r', 's', 2, 6) as { outcome: object };
    expect(memory({ records: [{ ...believed, outcome: { ...believed.outcome, ends: 'believed' } }] })).not.toHaveProperty('ends');
    expect(memory({ byHand: [{ id: 'h', finding: { known: 'band', low: -6, high: -3, chosen: -4 } }] })).not.toHaveProperty('ends');
  });

  it('tells the width from three lenses as wide on the same body, whatever their focal length', () => {
    const lenses = ['l', '1', '2', '3', 'slow'].map((id) => ({
      id,
      widest: id === 'slow' ? { from: 5.6, to: 5.6 } : { from: 1.8, to: 1.8 },
    }));
    const situations = lenses.map(({ id }) => ({ id: id === 'l' ? 's' : id, lens: id }));
    const records = [swept('a', '1', 0, 3), swept('b', '2', 0, 5), swept('c', '3', 0, 7), swept('d', 'slow', -15, 15)];
    const { centres, halfWidth } = memory({ lenses, situations, records });
    expect(centres).toEqual([]);
    expect(halfWidth?.median).toBeCloseTo(3, 5);
    expect(halfWidth?.logSd).toBeCloseTo(0.353, 2);
    expect(memory({ lenses, situations, records: records.slice(0, 2) }).halfWidth).toBeNull();
  });

  it('counts in steps of the scale', () => {
    const bodies = [{ id: 'b', scale: { min: -20, max: 20, step: 2 } }];
    const { halfWidth } = memory({ bodies, records: [swept('r', 's', 2, 8)] });
    expect(halfWidth).toEqual({ median: 2, logSd: 0.1 });
  });

  it('is how the light of the body failed in its last sweeps, in steps outside the band, and of nothing that was rewritten', () => {
    const sweep = (id: string, light: string, days: number, more: readonly object[] = []) => {
      const record = swept(id, 's', 2, 6, days) as { journal: readonly object[] };
      const holds = [4, 8, 1].flatMap((value) => [
        { did: 'began', at: T0, value, by: 'key' },
        { did: 'judged', at: T0, verdict: { light: value === 4 ? 'steady' : light, arrows: 'none' }, by: 'key', heard: null },
      ]);
      return { ...record, journal: [...record.journal, ...holds, ...more] };
    };
    const of = (light: string) => [
      { outside: 1.5, light },
      { outside: 0.5, light },
    ];
    const records = [sweep('a', 'dark', 0), sweep('b', 'late', 1), sweep('c', 'flicker', 2), sweep('d', 'late', 3)];
    expect(memory({ records }).lamp).toEqual([...of('late'), ...of('flicker'), ...of('late')]);
    const undone = [...records, sweep('e', 'dark', 4, [{ did: 'undid', at: T0, by: 'key' }])];
    expect(memory({ records: undone }).lamp).toEqual(memory({ records }).lamp);
  });
});
