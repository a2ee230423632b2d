// One line of the results table: a measurement, an entry or what photographs showed, with everything a table can hold.
// The holds themselves are not in it; they are in the backup.
import type { Moment } from '../../units.ts';
import { pairingsOf, type Kit, type Situation } from '../../kit/kit.ts';
import type { Subject } from '../../sweep/plan.ts';
import type { Conditions } from '../conditions.ts';
import type { Entry } from '../entry.ts';
import { byTime, historiesOf, linesOf } from '../history.ts';
import type { Library } from '../library.ts';
import type { Measured } from '../measured.ts';
import type { ProofRecord } from '../proofRecord.ts';
import { NOT_PHOTOGRAPHED, photographFields, type Photographed, type PhotographFields } from './photographed.ts';

export interface Row extends PhotographFields {
  readonly id: string | null;
  readonly kind: Measured['by'] | 'entered' | Photographed;
  readonly at: Moment | null;
  readonly body: string;
  readonly bodySerial: string | null;
  readonly lens: string;
  readonly lensSerial: string | null;
  readonly converter: string | null;
  readonly focalLength: number;
  readonly distance: number;
  readonly found: Measured['found'] | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly centre: number | null;
  readonly value: number | null;
  readonly from: number | null;
  readonly to: number | null;
  readonly within: number | null;
  readonly holds: number | null;
  readonly seconds: number | null;
  readonly light: number | null;
  readonly temperature: number | null;
  readonly firmware: string | null;
  readonly note: string | null;
}

/** Every measurement and entry of the logbook and all that photographs showed, oldest first. */
export function tableRowsOf(library: Library): Row[] {
  const situations = new Map(library.kit.situations.map((situation) => [situation.id, situation]));
  const place = placeIn(library.kit);
  return [...historiesOf(library)]
    .flatMap(([id, history]) => linesOf(history).map((line) => ({ line, situation: situations.get(id) ?? null })))
    .map(({ line, situation }) => {
      switch (line.line) {
        case 'measured':
          return { ...place(line.measured.subject, situation), ...measuredRow(line.measured) };
        case 'entered':
          return { ...place(line.entry.subject, situation), ...enteredRow(line.entry) };
        case 'photographed':
          return { ...place(line.record.subject, situation), ...photographedRow(line.record) };
      }
    })
    .sort(byTime);
}

type Located = Pick<Row, 'body' | 'bodySerial' | 'lens' | 'lensSerial' | 'converter' | 'focalLength' | 'distance'>;

function placeIn(kit: Kit): (subject: Subject, situation: Situation | null) => Located {
  const pairing = pairingsOf(kit);
  return (subject, situation) => {
    const { body, lens, converter } = situation ? pairing(situation) : { body: null, lens: null, converter: null };
    return {
      body: body?.name ?? subject.body,
      bodySerial: body?.serial ?? null,
      lens: lens?.name ?? subject.lens,
      lensSerial: lens?.serial ?? null,
      converter: converter?.name ?? null,
      focalLength: subject.focalLength,
      distance: subject.distance,
    };
  };
}

function measuredRow(measured: Measured) {
  const { id, at, by: kind, found, low, high, centre, chosen: value, interval, within, holds, seconds } = measured;
  const { from, to } = interval ?? { from: null, to: null };
  return {
    id,
    kind,
    at,
    found,
    low,
    high,
    centre,
    value,
    from,
    to,
    within,
    holds,
    seconds,
    ...told(measured.conditions),
    ...NOT_PHOTOGRAPHED,
  };
}

const NOT_MEASURED = {
  found: null,
  low: null,
  high: null,
  centre: null,
  from: null,
  to: null,
  within: null,
  holds: null,
  seconds: null,
} as const;

function enteredRow({ id, at, value, conditions }: Entry) {
  return { id, kind: 'entered' as const, at, ...NOT_MEASURED, value, ...told(conditions), ...NOT_PHOTOGRAPHED };
}

function photographedRow(record: ProofRecord) {
  return { id: record.id, at: record.at, ...NOT_MEASURED, value: null, ...told(null), ...photographFields(record) };
}

function told(conditions: Conditions | null) {
  const { light = null, temperature = null, firmware = null, note = null } = conditions ?? {};
  return { light, temperature, firmware, note };
}
