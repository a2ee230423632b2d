// What in something stored or brought in does not fit its schema, as data: where, and which fault it is.
import * as v from 'valibot';
import { FIELD_FAULTS, type FieldFault } from '../kit/fault.ts';
import { CONDITION_FAULTS, type ConditionFault } from './conditions.ts';

/** The low end of a band lies above its high end. */
export const ENDS_TURNED = 'ends turned round' as const;

export type NamedFault = FieldFault | ConditionFault | typeof ENDS_TURNED;

export interface Unfit {
  /** The path to it, as the file or the store has it; null for the whole. */
  readonly field: string | null;
  readonly fault: NamedFault;
}

const NAMED: readonly NamedFault[] = [...FIELD_FAULTS, ...CONDITION_FAULTS, ENDS_TURNED];

export const unfitIn = (issue: v.BaseIssue<unknown>): Unfit => ({
  field: v.getDotPath(issue),
  fault: NAMED.find((one) => one === issue.message) ?? 'does not fit',
});
