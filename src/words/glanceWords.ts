// All lenses of a body at one look: what its strips are, and what each of them says to those who hear the screen.
import type { Shelved } from '../logbook/shelf.ts';
import type { Subject } from '../sweep/plan.ts';

export interface GlanceWords {
  readonly title: string;
  readonly legend: string;
  readonly more: (count: number) => string;
  /** Where it was measured: the lens stands above. */
  readonly place: (subject: Subject) => string;
  /** The strip in words. */
  readonly strip: (one: Pick<Shelved, 'measured' | 'entered'>) => string;
}
