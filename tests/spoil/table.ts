// What is printed: kind against outcome, then what survived, line by line.
import { KINDS } from './change.ts';
import type { Place } from './places.ts';
import type { Trial } from './tally.ts';

const OUTCOMES = ['assertion', 'error', 'time', 'survived', 'the same'] as const;
type Outcome = (typeof OUTCOMES)[number];

export interface Judged extends Trial {
  readonly outcome: Outcome;
  /** Where it is the same: why. */
  readonly why: string;
}

export function table(judged: readonly Judged[]): string {
  const rows = KINDS.map((kind) =>
    row(
      kind,
      judged.filter(({ place }) => place.kind === kind),
    ),
  );
  const head = ['', 'drawn', ...OUTCOMES];
  return [head, ...rows, row('together', judged)].map((cells) => cells.map((cell, at) => (at === 0 ? cell.padEnd(12) : cell.padStart(11))).join('')).join('\n');
}

function row(name: string, judged: readonly Judged[]): string[] {
  return [name, String(judged.length), ...OUTCOMES.map((outcome) => String(judged.filter((each) => each.outcome === outcome).length))];
}

/** All but what an assertion caught. */
export const listed = (judged: readonly Judged[]): string =>
  OUTCOMES.slice(1)
    .flatMap((outcome) => judged.filter((each) => each.outcome === outcome))
    .map(({ place, outcome, why, verdict }) => [`${outcome}: ${told(place)}`, outcome === 'the same' ? why : verdict.noticed].filter(Boolean).join('\n    '))
    .join('\n');

export const told = ({ file, line, kind, before, after }: Place): string => `${file}:${line} ${kind}: ${oneLine(before)} \u2192 ${oneLine(after)}`;

const oneLine = (text: string): string => text.replace(/\s+/g, ' ');
