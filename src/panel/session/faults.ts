// What is wrong with a form, a sentence a field. Schemas of the kit bring their own sentences; where one only speaks of
// types, the field says what it wants.
import * as v from 'valibot';
import type { Fault } from './session.ts';

const WANTED: Readonly<Record<string, string>> = {
  name: 'Give it a name you will recognise.',
  'scale.min': 'Enter the lowest correction as a whole number, for example −20.',
  'scale.max': 'Enter the highest correction as a whole number, for example 20.',
  'scale.step': 'Enter how many corrections one click moves, a whole number from 1.',
  arrows: 'Choose what this body shows beside its focus light.',
};

export const NOT_READ: Fault = {
  field: null,
  sentence: 'What is stored has not been read, so nothing can be added to it. Close this panel and open it again.',
};

/** The first fault of each field. */
export function faultsIn(issues: readonly v.BaseIssue<unknown>[]): Fault[] {
  const faults = issues.map((issue): Fault => {
    const field = v.getDotPath(issue);
    const spoken = issue.message.startsWith('Invalid') ? undefined : issue.message;
    return { field, sentence: spoken ?? WANTED[field ?? ''] ?? 'This does not fit. Check what you entered.' };
  });
  return faults.filter(({ field }, index) => faults.findIndex((one) => one.field === field) === index);
}
