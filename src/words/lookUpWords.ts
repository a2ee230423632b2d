// The answer to a look-up: to be read aloud, and in a line of a list or of the address bar.
import type { Shelved } from '../logbook/shelf.ts';

export interface LookUpWords {
  /** The first of them and how many there are besides; said as well as shown. */
  readonly answer: (found: readonly Shelved[]) => string;
  /** The first of them, and the others beside it, for the eye. */
  readonly listed: (found: readonly Shelved[]) => string;
  /** Plain text, to be escaped by whoever puts it into markup. */
  readonly line: (one: Shelved) => string;
  readonly tryFewer: string;
  readonly unread: string;
}
