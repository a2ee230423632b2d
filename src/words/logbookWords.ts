// The logbook's list: finding and narrowing, and how each situation stands in it. The screen of a situation reads these too.
import type { BackupReminder } from '../logbook/backup/reminder.ts';
import type { DueReason } from '../logbook/due.ts';
import type { Shelved, Show } from '../logbook/shelf.ts';
import type { Outcome } from '../sweep/end/outcome.ts';
import type { Subject } from '../sweep/plan.ts';
import type { Moment } from '../units.ts';

export interface LogbookWords {
  readonly title: string;
  readonly find: { readonly label: string; readonly short: string; readonly found: string; readonly aloud: string };
  readonly found: (count: number) => string;
  readonly files: string;
  readonly practised: (count: number) => string;
  readonly filter: {
    readonly open: (on: boolean) => string;
    readonly body: string;
    readonly everyBody: string;
    readonly show: string;
    readonly is: Readonly<Record<Show, string>>;
    readonly temperature: { readonly label: string; readonly hint: string };
  };
  /** Nothing of what is to be shown, or nothing that fits what was typed. */
  readonly nothing: { readonly of: Readonly<Record<Show, string>>; readonly like: (typed: string) => string };
  readonly backUp: (reminder: BackupReminder) => string;
  readonly noValue: string;
  readonly more: (count: number) => string;
  readonly details: (subject: Subject) => string;
  readonly standing: (one: Pick<Shelved, 'state' | 'at' | 'value' | 'measured'>) => string;
  readonly due: (reason: DueReason) => string;
  readonly dueAgain: (reason: DueReason) => string;
  /** In as few words as a list has room for. */
  readonly result: (outcome: Outcome) => string;
  readonly day: (at: Moment) => string;
}
