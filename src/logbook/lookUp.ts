// Finding a lens's last value while its name is still being typed. Every word of the query must begin some word of the
// record, in any order; the newest record of each situation comes first.
import { newestOfEach } from './newest.ts';
import type { LogRecord } from './record.ts';

/** The newest record of each situation that answers the query, newest first. An empty query answers with all. */
export function lookUp(records: readonly LogRecord[], query: string): LogRecord[] {
  const wanted = wordsOf(query);
  return newestOfEach(records).filter(({ subject }) => {
    const words = wordsOf(`${subject.body} ${subject.lens} ${subject.focalLength}mm ${subject.distance / 1000}m`);
    return wanted.every((want) => words.some((word) => word.startsWith(want)));
  });
}

const wordsOf = (text: string): string[] => text.toLocaleLowerCase().split(/[^\p{L}\p{N}.]+/u).filter(Boolean);
