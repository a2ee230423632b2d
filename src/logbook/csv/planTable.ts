// What a table would add to the logbook, before anything is added. Kit is found by serial, else by name, else set up
// with the usual settings; ids are made from the content, so that a table brought in twice adds nothing the second
// time.
import * as v from 'valibot';
import { newBody, newLens, Situation, subjectFrom, type Kit, type Pairing } from '../../kit/kit.ts';
import { failed, got, type Result } from '../../result.ts';
import { moment, type Moment } from '../../units.ts';
import { Steps } from '../../storedUnits.ts';
import { canonical, fingerprintOf } from '../canonical.ts';
import { HandRecord } from '../byHand.ts';
import { Entry } from '../entry.ts';
import type { Library } from '../library.ts';
import { unfitIn } from '../unfit.ts';
import { COLUMNS } from './columns.ts';
import type { LineFault } from './fault.ts';
import { PHOTOGRAPHED } from './photographed.ts';
import type { ReadRows } from './readTable.ts';
import type { Row } from './row.ts';

export interface TablePlan {
  /** The logbook after it. */
  readonly library: Library;
  readonly added: number;
  /** Lines whose record is already here, and lines that hold no value to keep (a sweep that found none; what photographs showed). */
  readonly same: number;
  readonly withoutValue: number;
  /** Names of kit that would be set up. */
  readonly newKit: readonly string[];
  readonly faults: readonly LineFault[];
}

/** Plans the table; `now` dates the kit that is set up, and the lines without a date. */
export function planTable(mine: Library, { rows, faults: unread }: ReadRows, now: Moment): TablePlan {
  let { kit } = mine;
  const byHand = [...mine.byHand];
  const entries = [...mine.entries];
  const here = new Set([...mine.records, ...byHand, ...entries, ...mine.proofs].map(({ id }) => id));
  const faults = [...unread];
  let same = 0;
  let withoutValue = 0;
  for (const { line, row } of rows) {
    const id = row.id ?? `table-${fingerprintOf(canonical(row))}`;
    if (here.has(id)) same++;
    else if (isPhotographed(row) || (row.value === null && (row.kind === 'entered' || row.low === null || row.high === null))) withoutValue++;
    else {
      const placed = placeRow(kit, row, now);
      const item = placed.ok ? recordOf(row, id, placed.value, now) : placed;
      if (!item.ok) faults.push({ line, ...item.fault });
      else if (placed.ok) {
        kit = placed.value.kit;
        here.add(id);
        if ('value' in item.value) entries.push(item.value);
        else byHand.push(item.value);
      }
    }
  }
  const known = new Set(namesIn(mine.kit));
  return {
    library: { ...mine, kit, byHand, entries },
    added: byHand.length + entries.length - mine.byHand.length - mine.entries.length,
    same,
    withoutValue,
    newKit: namesIn(kit).filter((name) => !known.has(name)),
    faults: faults.sort((a, b) => a.line - b.line),
  };
}

/** Its figures are whole only in the backup. */
const isPhotographed = ({ kind }: Row): boolean => PHOTOGRAPHED.some((each) => each === kind);

type RowFault = Omit<LineFault, 'line'>;

interface Placed {
  readonly kit: Kit;
  readonly situation: Situation;
  readonly pairing: Pairing;
}

/** The situation of a row, in a kit that has it. */
function placeRow(kit: Kit, row: Row, now: Moment): Result<Placed, RowFault> {
  const idFor = (...parts: readonly (string | number | null)[]) => `table-${fingerprintOf(canonical(parts))}`;
  const body = matching(kit.bodies, row.body, row.bodySerial) ?? {
    ...newBody(idFor('body', row.body, row.bodySerial), row.body, now),
    serial: row.bodySerial,
  };
  const lens = matching(kit.lenses, row.lens, row.lensSerial) ?? {
    ...newLens(idFor('lens', row.lens, row.lensSerial), row.lens, now),
    serial: row.lensSerial,
  };
  const converter = row.converter === null ? null : matching(kit.converters, row.converter, null);
  if (converter === undefined) {
    return failed({ column: 'converter', fault: { is: 'no such converter', converter: row.converter ?? '' } });
  }
  const { focalLength, distance } = row;
  const wanted = { body: body.id, lens: lens.id, converter: converter?.id ?? null, focalLength, distance };
  const known = kit.situations.find(
    (situation) =>
      situation.lens === wanted.lens &&
      situation.body === wanted.body &&
      situation.converter === wanted.converter &&
      situation.focalLength === focalLength &&
      situation.distance === distance,
  );
  const situation = v.safeParse(Situation, known ?? { ...wanted, id: idFor(...Object.values(wanted)), changed: now, retired: null });
  if (!situation.success) return failed(faultOf(situation.issues[0]));
  return got({
    situation: situation.output,
    pairing: { body, lens, converter },
    kit: {
      ...kit,
      bodies: withItem(kit.bodies, body),
      lenses: withItem(kit.lenses, lens),
      situations: withItem(kit.situations, situation.output),
    },
  });
}

function recordOf(row: Row, id: string, { situation, pairing }: Placed, now: Moment): Result<HandRecord | Entry, RowFault> {
  const at = row.at ?? now;
  const { light, temperature, firmware, note } = row;
  const about = {
    id,
    at,
    subject: subjectFrom(situation, pairing),
    conditions: { told: moment(0), light, temperature, firmware, note },
  };
  const { low, high, value } = row;
  for (const [column, step] of [
    ['low', low],
    ['high', high],
    ['value', value],
  ] as const) {
    if (step !== null && !v.is(Steps, step)) return failed({ column, fault: { is: 'no correction', value: step } });
  }
  const band = low !== null && high !== null;
  const chosen = value ?? (band ? Math.trunc((low + high) / 2) : null);
  const finding = band ? { known: 'band', low, high, chosen } : { known: 'value', chosen };
  const source: HandRecord['source'] = row.kind === 'by hand' || row.kind === 'from another computer' ? row.kind : 'from a table';
  const read = row.kind === 'entered' ? v.safeParse(Entry, { ...about, value, record: null }) : v.safeParse(HandRecord, { ...about, source, finding });
  return read.success ? got(read.output) : failed(faultOf(read.issues[0]));
}

function matching<Item extends { name: string; serial?: string | null }>(items: readonly Item[], name: string, serial: string | null) {
  const bySerial = serial === null ? undefined : items.find((item) => item.serial === serial);
  return bySerial ?? items.find((item) => plain(item.name) === plain(name) && (serial === null || (item.serial ?? null) === null));
}

const plain = (name: string): string => name.trim().toLowerCase().replace(/\s+/g, ' ');
const withItem = <Item extends { id: string }>(items: readonly Item[], item: Item): Item[] =>
  items.some(({ id }) => id === item.id) ? [...items] : [...items, item];
const namesIn = (kit: Kit): string[] => [...kit.bodies, ...kit.lenses].map(({ name }) => name);

/** What does not fit, and the column it came from: the last part of its path is the key of a column. */
function faultOf(issue: v.BaseIssue<unknown>): RowFault {
  const { field, fault } = unfitIn(issue);
  return { column: columnOf(field?.split('.').at(-1)), fault: { is: 'unfit', fault } };
}

const columnOf = (key: string | undefined): keyof Row | null => COLUMNS.find((column) => column.key === key)?.key ?? null;
