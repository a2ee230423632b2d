// A file that is cut short at each byte: what is read of it, and where that changes.
import { oneLine } from '../../kept/oneLine.ts';

/** How many first bytes give which answer: one line for each stretch over which it stays. */
export function stretches(file: Uint8Array, read: (part: Uint8Array) => unknown): string[] {
  const told: string[] = [];
  let last = '';
  for (let length = 0; length <= file.length; length += 1) {
    const answer = oneLine(read(file.subarray(0, length)));
    if (answer !== last) told.push(`${length} ${answer}`);
    last = answer;
  }
  return told;
}
