// All works, a few of them more often than others, as a photographer does them.
import type { Work } from '../work.ts';
import { bringBack } from './bringBack.ts';
import { entering } from './entering.ts';
import { importing } from './importing.ts';
import { kitEdit } from './kitEdit.ts';
import { learning } from './learning.ts';
import { migration } from './migration.ts';
import { photographs } from './photographs.ts';
import { sweep } from './sweep.ts';
import { sync } from './sync.ts';

export const WORKS: readonly Work[] = [sweep, sweep, entering, entering, importing, kitEdit, kitEdit, bringBack, migration, sync, photographs, learning];
