// What photographs showed, as one line of the logbook or of a page on paper.
import type { ProofRecord } from '../logbook/proofRecord.ts';

export interface ShownWords {
  readonly showed: (record: ProofRecord) => string;
  /** By which pictures, and when. */
  readonly by: (record: ProofRecord) => string;
  readonly facts: (record: ProofRecord) => string;
}
