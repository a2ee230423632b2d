// A small logbook for a test: only what the test is about is named, the rest is as it usually is.
import * as v from 'valibot';
import { newBody, newConverter, newLens } from '../../src/kit/kit.ts';
import { unknownConditions } from '../../src/logbook/conditions.ts';
import { Library } from '../../src/logbook/library.ts';
import { moment } from '../../src/units.ts';

type Part = Readonly<Record<string, unknown>> & { readonly id?: string };

export interface Parts {
  readonly bodies?: readonly Part[];
  readonly lenses?: readonly Part[];
  readonly converters?: readonly Part[];
  readonly situations?: readonly Part[];
  readonly records?: readonly unknown[];
  readonly byHand?: readonly Part[];
  readonly entries?: readonly Part[];
  readonly notes?: readonly Part[];
  readonly proofs?: readonly Part[];
}

const ONE_PICTURE = { is: 'one', taken: null, error: { value: 2, low: 1, high: 3 }, depth: { front: 20, behind: 22 }, sharp: 'sharp' };

export const T0 = moment(1_767_261_600_000);
export const DAY = 86_400_000;

/** Body `b`, lens `l` and situation `s` of the two are there unless others are named. */
export function libraryWith(parts: Parts): Library {
  const each = (items: readonly Part[], usual: (id: string) => object) => items.map((item) => ({ ...usual(item.id ?? 'x'), ...item }));
  const situation = {
    body: 'b',
    lens: 'l',
    converter: null,
    focalLength: 85,
    distance: 4250,
    changed: 0,
    retired: null,
  };
  const subject = { situation: 's', body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: 85, distance: 4250 };
  const conditions = unknownConditions(moment(0));
  return v.parse(Library, {
    version: 3,
    kit: {
      bodies: each(parts.bodies ?? [{ id: 'b' }], (id) => newBody(id, 'Velde M1', moment(0))),
      lenses: each(parts.lenses ?? [{ id: 'l' }], (id) => newLens(id, 'Orrin 85 f/1.8', moment(0))),
      converters: each(parts.converters ?? [], (id) => newConverter(id, 'Orrin 1.4×', 1.4, moment(0))),
      situations: each(parts.situations ?? [{ id: 's' }], () => situation),
    },
    records: parts.records ?? [],
    byHand: each(parts.byHand ?? [], () => ({
      at: T0,
      subject,
      source: 'by hand',
      finding: { known: 'value', chosen: 0 },
      conditions,
    })),
    entries: each(parts.entries ?? [], () => ({ at: T0, subject, value: 0, record: null, conditions })),
    notes: each(parts.notes ?? [], () => ({ at: T0, of: 'b', what: 'service', note: '' })),
    proofs: each(parts.proofs ?? [], () => ({ at: T0, practice: false, subject, proof: ONE_PICTURE, crops: null })),
  });
}

/** A finished sweep with this band, for what reads records. */
export function sweepRecord(id: string, finished: number, low: number, high: number, more: Part = {}): unknown {
  const subject = { situation: 's', body: 'Velde M1', lens: 'Orrin 85 f/1.8', focalLength: 85, distance: 4250 };
  const centre = (low + high) / 2;
  const manner = { care: 'standard', order: 'fewest', pace: { set: 'own' }, holdTime: 5 };
  const memory = { centres: [], halfWidth: null };
  const plan = {
    subject,
    scale: { min: -20, max: 20, step: 1 },
    arrows: 'absent',
    manner,
    memory,
    start: 0,
    practice: null,
  };
  return {
    id,
    finished,
    practice: false,
    subject,
    outcome: {
      found: 'band',
      low,
      high,
      centre,
      chosen: Math.trunc(centre),
      other: null,
      interval: { from: centre - 0.5, to: centre + 0.5 },
      within: 0.99,
      ends: 'seen',
      tally: { holds: 9, seconds: 80 },
    },
    journal: [{ did: 'opened', at: finished, id, plan }],
    ...more,
  };
}
