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

/** Its sentence is drawn when it is read, in whatever language the screens are in by then. */
export const drawnFault = (field: string | null, sentence: () => string): Fault => ({
  field,
  get sentence() {
    return sentence();
  },
});

/** The first fault of each field. */
export function faultsIn(issues: readonly v.BaseIssue<unknown>[]): Fault[] {
  const faults = issues.map((issue): Fault => {
    const field = v.getDotPath(issue);
    const named = FIELD_FAULTS.find((one) => one === issue.message) ?? WANTED[field ?? ''] ?? 'does not fit';
    return drawnFault(field, () => words('kit').fault[named]);
  });
  return faults.filter(({ field }, index) => faults.findIndex((one) => one.field === field) === index);
}
