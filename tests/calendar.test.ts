import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isoOf, minutesEast, momentOf, readIso } from '../src/calendar.ts';
import { moment } from '../src/units.ts';

const LAST = Date.UTC(9999, 11, 31, 23, 59, 59, 999);

describe('dates', () => {
  it('are written as the platform writes them, from 1970 to the year 9999', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: LAST }), (at) => {
        expect(isoOf(moment(at))).toBe(new Date(at).toISOString().replace('.000Z', 'Z'));
        expect(isoOf(moment(at), 'day')).toBe(new Date(at).toISOString().slice(0, 10));
      }),
      { numRuns: 2000 },
    );
  });

  it('come back as they were written', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: LAST }), (at) => void expect(readIso(isoOf(moment(at)))).toBe(at)),
      { numRuns: 2000 },
    );
  });

  it('are read with a zone, without one as UTC, and without a time as midnight', () => {
    expect(readIso('2026-03-04')).toBe(Date.UTC(2026, 2, 4));
    expect(readIso('2026-03-04 05:06')).toBe(Date.UTC(2026, 2, 4, 5, 6));
    expect(readIso('2026-03-04T05:06:07.5+02:00')).toBe(Date.UTC(2026, 2, 4, 3, 6, 7, 500));
  });

  it('that do not exist, or can be read in two ways, are none', () => {
    for (const text of [
      '2026-02-29',
      '2026-13-01',
      '2026-00-10',
      '2026-04-31',
      '2100-02-29',
      '1900-01-01',
      '03/04/2026',
      '04.03.2026',
      '2026-3-4',
      '2026-03-04T24:00',
      '',
    ]) {
      expect(readIso(text)).toBeNull();
    }
    expect(readIso('2000-02-29')).toBe(Date.UTC(2000, 1, 29));
    expect(momentOf({ year: 2026, month: 3, day: 4, hour: 25, minute: 0, second: 0 }, 0)).toBeNull();
  });

  it('have zones in hours and minutes', () => {
    expect([minutesEast('Z'), minutesEast('+02:00'), minutesEast('-0330'), minutesEast('+15:00'), minutesEast('CET')]).toEqual([0, 120, -210, null, null]);
  });
});
