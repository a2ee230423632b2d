// Any valid logbook, for the properties: every optional part present and absent, text of every kind, ids unique a list.
import fc from 'fast-check';
import * as v from 'valibot';
import { Library } from '../../src/logbook/library.ts';

const id = fc.oneof(fc.constantFrom('a', 'b', 'c', '__proto__', 'constructor'), fc.uuid());
const moment = fc.integer({ min: 0, max: 4_000_000_000_000 });
const step = fc.integer({ min: -200, max: 200 });
const decimal = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map((x) => x + 0);
const orNull = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: null, freq: 3 });
const text = (maxLength: number) => fc.string({ unit: 'grapheme', minLength: 1, maxLength: Math.floor(maxLength / 8) });
const name = fc
  .oneof(text(60), fc.constantFrom('Orrin 85 f/1.8', 'Velde M1', '=1+1', '+3', "'=x", '<b>', 'a,"b"\r\nc'))
  .map((it) => it.trim())
  .filter((it) => it !== '' && it.length <= 60);
const kept = { id, changed: moment, retired: orNull(moment) };
const focal = decimal(4, 2000);
const distance = decimal(50, 500_000);
const aperture = decimal(0.5, 64);

const body = fc.record({
  ...kept,
  name,
  model: orNull(name),
  serial: orNull(name),
  sensor: orNull(fc.record({ width: decimal(4, 70), height: decimal(4, 70) })),
  scale: fc.constantFrom({ min: -20, max: 20, step: 1 }, { min: -10, max: 10, step: 1 }, { min: -6, max: 6, step: 2 }),
  arrows: fc.constantFrom('absent', 'right-is-up', 'right-is-down'),
  zoomStore: fc.constantFrom('one', 'two'),
  remembers: orNull(fc.integer({ min: 1, max: 1000 })),
  copies: fc.constantFrom('told apart', 'share a value', 'not known'),
  trigger: fc.constantFrom('half-press', 'rear button'),
  manualFocus: fc.constantFrom('on the lens', 'on the body', 'on both', 'not known'),
});

const lens = fc.record({
  ...kept,
  name,
  model: orNull(name),
  serial: orNull(name),
  focal: orNull(fc.tuple(focal, focal).map(([a, b]) => ({ from: Math.min(a, b), to: Math.max(a, b) }))),
  widest: orNull(fc.record({ from: aperture, to: aperture })),
  closest: orNull(distance),
});

const converter = fc.record({ ...kept, name, factor: decimal(0.5, 4) });
const situation = fc.record({ ...kept, body: id, lens: id, converter: orNull(id), focalLength: focal, distance });

const subject = fc.record({ situation: id, body: name, lens: name, focalLength: focal, distance });
const conditions = fc.record({
  told: moment,
  light: orNull(decimal(-10, 24)),
  temperature: orNull(decimal(-60, 60)),
  firmware: orNull(text(40)),
  note: orNull(text(400)),
});

const tally = fc.record({ holds: fc.nat(99), seconds: decimal(0, 9999) });
const interval = fc.record({ from: decimal(-30, 30), to: decimal(-30, 30) });
const outcome = fc.oneof(
  fc.record({
    found: fc.constant('band'),
    low: step,
    high: step,
    centre: step.map((x) => x / 2),
    chosen: step,
    other: orNull(step),
    interval,
    within: decimal(0, 1),
    ends: fc.constantFrom('seen', 'believed'),
    tally,
  }),
  fc.record({
    found: fc.constant('past the limit'),
    side: fc.constantFrom('low', 'high', 'both'),
    visible: orNull(step),
    bound: orNull(step.map((x) => x / 2)),
    interval,
    tally,
  }),
  fc.record({
    found: fc.constant('carried over'),
    side: fc.constantFrom('low', 'high'),
    visible: orNull(step),
    aside: fc.record({ low: step, high: step }),
    halfWidth: decimal(0, 60),
    halfInterval: interval,
    centre: fc.integer({ min: -100, max: 100 }).map((x) => x / 2),
    interval,
    chosen: step,
    within: decimal(0, 1),
    inside: fc.boolean(),
    service: fc.boolean(),
    ends: fc.constantFrom('seen', 'believed'),
    tally,
  }),
  fc.record({ found: fc.constant('beyond the scale'), side: fc.constantFrom('above', 'below'), tally }),
  fc.record({ found: fc.constant('nothing'), tally }),
);
const light = fc.constantFrom('steady', 'late', 'flicker', 'dark', 'untold');
const event = fc.oneof(
  fc.record({ did: fc.constant('began'), at: moment, value: step, by: fc.constantFrom('voice', 'key', 'switch') }),
  fc.record({ did: fc.constant('ran'), at: moment }),
  fc.record({
    did: fc.constant('judged'),
    at: moment,
    verdict: fc.record({ light, arrows: fc.constantFrom('none', 'left', 'right') }),
    by: fc.constant('voice'),
    heard: orNull(text(40)),
  }),
);
const record = fc
  .record(
    {
      id,
      finished: moment,
      practice: fc.boolean(),
      subject,
      outcome,
      events: fc.array(event, { maxLength: 3 }),
      conditions,
    },
    { requiredKeys: ['id', 'finished', 'practice', 'subject', 'outcome', 'events'] },
  )
  .map(({ events, ...rest }) => {
    const manner = { care: 'quick', order: 'fewest', pace: { set: 'counted', toDial: 4 }, holdTime: 5 };
    const memory = { centres: [{ centre: 1.5, sd: 1.5, weight: 1, from: { at: 1, of: 'situation' } }], halfWidth: null };
    const scale = { min: -20, max: 20, step: 1 };
    const plan = { subject: rest.subject, scale, arrows: 'absent', manner, memory, start: 0, practice: null };
    return { ...rest, journal: [{ did: 'opened', at: rest.finished, id: rest.id, plan }, ...events] };
  });

const finding = fc.oneof(
  fc.tuple(step, step, step).map(([a, b, chosen]) => ({ known: 'band', low: Math.min(a, b), high: Math.max(a, b), chosen })),
  fc.record({ known: fc.constant('value'), chosen: step }),
);
const source = fc.constantFrom('by hand', 'from a table', 'from another computer');
const byHand = fc.record({ id, at: moment, subject, source, finding, conditions });
const entry = fc.record({ id, at: moment, subject, value: step, record: orNull(id), conditions });
const note = fc.record({ id, at: moment, of: id, what: fc.constantFrom('firmware', 'service'), note: text(100) });

const measured = fc.record({ value: decimal(-500, 500), low: decimal(-500, 500), high: decimal(-500, 500) });
const depth = fc.record({ front: decimal(0, 9999), behind: fc.oneof(decimal(0, 9999), fc.constant('infinite')) });
const taken = orNull(moment);
const joined = fc.oneof(
  fc.record({ is: fc.constant('agree'), band: measured, difference: measured, joint: measured }),
  fc.record({ is: fc.constant('differ'), band: measured, difference: measured }),
);
const proof = fc.oneof(
  fc.record({ is: fc.constant('one'), taken, error: measured, depth, sharp: fc.constantFrom('sharp', 'not sharp', 'not sure') }),
  fc.record({
    is: fc.constant('check'),
    taken,
    correction: step,
    shots: fc.nat(99),
    reference: fc.boolean(),
    bias: measured,
    repeatability: decimal(0, 99),
    nearLessFar: orNull(measured),
    depth,
    verdict: fc.oneof(
      fc.record({ is: fc.constant('confirmed') }),
      fc.record({ is: fc.constant('shifted'), lies: fc.constantFrom('in front', 'behind') }),
      fc.record({ is: fc.constant('not enough'), more: fc.nat(12) }),
    ),
  }),
  fc.record({
    is: fc.constant('bracket'),
    taken,
    shots: fc.array(fc.record({ correction: step, error: measured }), { maxLength: 3 }),
    reference: orNull(measured),
    step: measured,
    centre: measured,
    scatter: decimal(0, 99),
    atZero: decimal(-500, 500),
    joined: orNull(joined),
  }),
);
const proofRecord = fc.record({ id, at: moment, practice: fc.boolean(), subject, proof, crops: orNull(id) });

const listOf = <T extends { id: string }>(arbitrary: fc.Arbitrary<T>, maxLength: number) =>
  fc.uniqueArray(arbitrary, { selector: (item) => item.id, maxLength });

/**
 * Any logbook with lists of at most so many items; it is checked on the way, so the generators cannot go wrong
 * unseen.
 */
export const anyLibrary = (most = 4): fc.Arbitrary<Library> =>
  fc
    .record({
      version: fc.constant(3),
      kit: fc.record({
        bodies: listOf(body, most),
        lenses: listOf(lens, most),
        converters: listOf(converter, most),
        situations: listOf(situation, most),
      }),
      records: listOf(record, most),
      byHand: listOf(byHand, most),
      entries: listOf(entry, most),
      notes: listOf(note, most),
      proofs: listOf(proofRecord, most),
    })
    .map((library) => v.parse(Library, library));
