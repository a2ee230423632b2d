// Out and in: backups, tables, and the copies that the browser keeps.
import type { BackupFault } from '../logbook/backup/backup.ts';
import type { Title } from '../logbook/backup/items.ts';
import type { Compared, RestorePlan } from '../logbook/backup/restore.ts';
import type { Column } from '../logbook/csv/columns.ts';
import type { LineFault, TableFault } from '../logbook/csv/fault.ts';
import type { TablePlan } from '../logbook/csv/planTable.ts';
import type { ListName } from '../logbook/library.ts';
import type { SetAside } from '../logbook/readLibrary.ts';
import type { Moment } from '../units.ts';

export interface FilesWords {
  readonly title: string;
  /** The file has gone since it was chosen. */
  /** Below what a file is chosen for. */
  readonly drop: string;
  readonly unread: string;
  /** What takes a while with a large logbook; `share`: from 0 to 1. */
  readonly howFar: Readonly<Record<'writing' | 'reading' | 'comparing' | 'bringing', (share: number) => string>>;
  readonly backup: {
    readonly title: string;
    /** What a backup holds, and what it does not. */
    readonly about: string;
    readonly newest: (made: Moment | null) => string;
    readonly write: string;
    readonly withoutWords: string;
  };
  /** The reminder of a backup, on the start. */
  readonly reminder: {
    readonly label: string;
    readonly unsaved: (count: number) => string;
    readonly uninstall: string;
    readonly notNow: string;
  };
  readonly restore: {
    readonly choose: string;
    readonly fault: Readonly<Record<BackupFault, string>>;
    /** What the backup holds, before anything is changed. */
    readonly plan: (made: Moment, plan: RestorePlan) => readonly string[];
    readonly taught: (count: number) => string;
    readonly conflict: string;
    readonly each: string;
    readonly item: (list: ListName, title: Title, is: Exclude<Compared, 'same'>) => string;
    /** Items that are not drawn. */
    readonly more: (count: number) => string;
    readonly aside: (why: SetAside['why']) => string;
    readonly join: string;
    readonly replace: string;
    readonly leave: string;
    readonly done: string;
    /** The logbook is in; what kept the taught words out. */
    readonly withoutWords: (why: string) => string;
  };
  readonly table: {
    readonly title: string;
    readonly about: string;
    readonly write: string;
    readonly choose: string;
    readonly fault: (fault: TableFault) => string;
    readonly meanings: string;
    readonly passedOver: string;
    readonly column: (number: number) => string;
    /** What a column is, and its heading in the tables that are written here. */
    readonly meaning: (column: Pick<Column, 'key' | 'heading'>) => string;
    readonly missing: (meanings: readonly string[]) => string;
    readonly plan: (plan: TablePlan) => readonly string[];
    /** `heading`: of that column in the file; null where it has none. */
    readonly line: (fault: LineFault, heading: string | null) => string;
    /** Lines with faults that are not drawn. */
    readonly more: (count: number) => string;
    readonly bring: string;
    readonly done: string;
  };
  readonly copies: {
    readonly title: string;
    readonly none: string;
    readonly unread: string;
    readonly bringBack: (at: Moment) => string;
    readonly done: string;
  };
}
