// A logbook as years of work leave it, with names as long as they may be, and everything a screen has to say at once.
import type { Library } from '../../../src/logbook/library.ts';
import { DAY, libraryWith, sweepRecord, T0 } from '../../logbook/libraryWith.ts';
import { inPhase, later } from '../../sweep/staged.ts';

const LONG_BODY = 'Velde M1, the one from the big case with the new shutter';
const LONG_LENS = 'Orrin 70-200 f/2.8 of the second series, lent by the studio';
const subject = { situation: 's', body: LONG_BODY, lens: LONG_LENS, focalLength: 200, distance: 10_000 };
const conditions = { told: T0, light: 9, temperature: 4, firmware: '2.1', note: 'In the cold hall, target taped to the door, tripod on the concrete floor.' };

/** A sweep with every hold behind it. */
const { journal } = inPhase('offered');
const whole = [...journal, { did: 'finished', at: later(900), by: 'key' }];

const shop = (now: number): Library =>
  libraryWith({
    bodies: [
      {
        id: 'b',
        name: LONG_BODY,
        serial: 'KX-0047-1183',
        model: 'Velde M1',
        remembers: 2,
        copies: 'share a value',
        zoomStore: 'two',
        sensor: { width: 36, height: 24 },
      },
      { id: 'b2', name: 'Velde M2', serial: '7702' },
      { id: 'b3', name: 'Velde M0', retired: T0 },
    ],
    lenses: [
      { id: 'l', name: LONG_LENS, serial: 'A-000-112-358', focal: { from: 70, to: 200 }, widest: { from: 2.8, to: 2.8 }, closest: 1200 },
      { id: 'l2', name: LONG_LENS, serial: 'A-000-112-359' },
      { id: 'l3', name: 'Orrin 35 f/2' },
    ],
    converters: [{ id: 'c', name: 'Orrin 1.4×', factor: 1.4 }],
    situations: [
      { id: 's', focalLength: 200, distance: 10_000 },
      { id: 's2', lens: 'l2', focalLength: 70, distance: 3500 },
      { id: 's3', lens: 'l3', focalLength: 35, distance: 1750, body: 'b2' },
      { id: 's4', focalLength: 70, distance: 3500, converter: 'c' },
    ],
    records: [
      sweepRecord('r1', now - 500 * DAY, -4, 2, { subject, conditions }),
      sweepRecord('r2', now - 200 * DAY, -2, 4, { subject }),
      sweepRecord('r3', now - 40 * DAY, 6, 13, { subject, journal: whole }),
      sweepRecord('p', now - 3 * DAY, -2, 4, { practice: true }),
    ],
    byHand: [{ id: 'h', at: now - 320 * DAY, subject, finding: { known: 'band', low: -3, high: 2, chosen: 0 }, conditions }],
    entries: [
      { id: 'e1', at: now - 499 * DAY, subject, value: -1, record: 'r1', conditions },
      { id: 'e2', at: now - 199 * DAY, subject, value: 1, record: 'r2' },
      { id: 'e3', at: now - 10 * DAY, subject: { situation: 's3', body: 'Velde M2', lens: 'Orrin 35 f/2', focalLength: 35, distance: 1750 }, value: -12 },
      { id: 'e4', at: now - 10 * DAY, subject: { ...subject, situation: 's4', focalLength: 70, distance: 3500 }, value: 3 },
    ],
    notes: [{ id: 'n', of: 'b', at: now - 20 * DAY, what: 'firmware', note: '2.2, as the maker advised' }],
  });

export const storedShop = (now: number): Record<string, unknown> => {
  const { kit, records, byHand, entries, notes } = shop(now);
  const under = (kind: string, items: readonly { id: string }[]) => items.map((item) => [`${kind}:${item.id}`, item] as const);
  const all = [...under('record', records), ...under('by-hand', byHand), ...under('entry', entries), ...under('note', notes)];
  return JSON.parse(JSON.stringify({ version: 3, kit, ...Object.fromEntries(all) })) as Record<string, unknown>;
};
