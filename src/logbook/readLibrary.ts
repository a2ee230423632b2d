// Reading a logbook that may be old, damaged or not ours. Every item is judged on its own: what does not fit is set
// aside whole with a sentence, and the rest is read.
import * as v from 'valibot';
import { Body, Converter, Lens, Situation } from '../kit/kit.ts';
import { got, type Result } from '../result.ts';
import { HandRecord } from './byHand.ts';
import { Entry } from './entry.ts';
import { KitNote } from './kitNote.ts';
import type { Library } from './library.ts';
import { presentVersion, type RawLibrary } from './libraryVersions.ts';
import { LogRecord } from './record.ts';
import { VERSION } from './stored.ts';

/** An item that does not fit, as it was found, and why. */
export interface SetAside {
  readonly item: unknown;
  readonly sentence: string;
}

export interface ReadLibrary {
  readonly library: Library;
  readonly setAside: readonly SetAside[];
}

/** Reads a store of any version: a sentence when it is no logbook at all, else all that fits and all that does not. */
export function readLibrary(stored: unknown): Result<ReadLibrary> {
  const present = presentVersion(stored);
  if (!present.ok) return present;
  const store = present.value;
  const kit = isObject(store['kit']) ? store['kit'] : {};
  const setAside: SetAside[] = [];
  const library: Library = {
    version: VERSION,
    kit: {
      bodies: readList('body', Body, kit['bodies'], setAside),
      lenses: readList('lens', Lens, kit['lenses'], setAside),
      converters: readList('converter', Converter, kit['converters'], setAside),
      situations: readList('situation', Situation, kit['situations'], setAside),
    },
    records: readList('sweep', LogRecord, store['records'], setAside),
    byHand: readList('record by hand', HandRecord, store['byHand'], setAside),
    entries: readList('entry', Entry, store['entries'], setAside),
    notes: readList('note', KitNote, store['notes'], setAside),
  };
  return got({ library, setAside });
}

type Item = { readonly id: string };

function readList<Schema extends v.GenericSchema<unknown, Item>>(
  called: string,
  schema: Schema,
  list: unknown,
  setAside: SetAside[],
): v.InferOutput<Schema>[] {
  if (list === undefined) return [];
  if (!Array.isArray(list)) {
    setAside.push({ item: list, sentence: `The list of every ${called} was not read: it is no list.` });
    return [];
  }
  const read = new Map<string, v.InferOutput<Schema>>();
  list.forEach((item: unknown, index) => {
    const result = v.safeParse(schema, item);
    const aside = (why: string) =>
      setAside.push({ item, sentence: `${capital(called)} ${index + 1} was not read: ${why}` });
    if (!result.success) aside(whyNot(result.issues[0]));
    else if (read.has(result.output.id)) aside('there is another with its id.');
    else read.set(result.output.id, result.output);
  });
  return [...read.values()];
}

function whyNot(issue: v.BaseIssue<unknown>): string {
  const path = v.getDotPath(issue);
  const field = path === null ? '' : `${path.slice(0, 60)}: `;
  return field + (issue.message.length > 200 ? 'it does not fit.' : issue.message);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const isObject = (value: unknown): value is RawLibrary =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
