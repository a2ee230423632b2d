// What is wrong with a form, a sentence a field. The schemas of the kit name the fault; where one only speaks of types, the
// field says what it wants.
import * as v from 'valibot';
import { FIELD_FAULTS, type FieldFault } from '../../kit/fault.ts';
import { words } from '../../words/catalogue.ts';
import type { Fault } from './session.ts';

const WANTED: Readonly<Record<string, FieldFault>> = {
  name: 'no name',
  'scale.min': 'no lowest correction',
  'scale.max': 'no highest correction',
  'scale.step': 'no step',
  arrows: 'arrows not chosen',
};

/** The first fault of each field. */
export function faultsIn(issues: readonly v.BaseIssue<unknown>[]): Fault[] {
  const { fault } = words('kit');
  const faults = issues.map((issue): Fault => {
    const field = v.getDotPath(issue);
    const named = FIELD_FAULTS.find((one) => one === issue.message) ?? WANTED[field ?? ''] ?? 'does not fit';
    return { field, sentence: fault[named] };
  });
  return faults.filter(({ field }, index) => faults.findIndex((one) => one.field === field) === index);
}
