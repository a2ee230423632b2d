// How it was when a value was measured or entered: its fields, what does not fit them, and all of it in a line.
import type { ConditionFault, Conditions } from '../logbook/conditions.ts';

export interface ConditionsWords {
  readonly open: string;
  readonly fields: Readonly<Record<'day' | 'temperature' | 'light' | 'firmware' | 'note', { readonly label: string; readonly hint?: string }>>;
  /** `no day`: what was typed is no date, or one that is still to come. */
  readonly fault: Readonly<Record<ConditionFault | 'no day' | 'does not fit', string>>;
  /** Empty where nothing was noted. */
  readonly inLine: (conditions: Conditions | null) => string;
}
