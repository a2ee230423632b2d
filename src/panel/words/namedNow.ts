// Whose correction it is, where it is nobody's: the practice camera has no names of a person's.
import { isPractised } from '../../sweep/named.ts';
import type { Subject } from '../../sweep/plan.ts';
import { words } from '../../words/catalogue.ts';

/** The practice camera's names are those of the screens' language, whichever the sweep was opened in. */
export const namedNow = (subject: Subject): Subject => (isPractised(subject) ? { ...subject, ...words('session').practice } : subject);
