// Whose correction it is, in words, whether it has a name already or not.
import { isNamed, isPractised } from '../../sweep/named.ts';
import type { Subject, Unnamed } from '../../sweep/plan.ts';
import { words } from '../../words/catalogue.ts';
import type { SubjectWords } from '../../words/toldWords.ts';

/** The practice camera has no names of a person's: they are those of the screens' language, whichever the sweep was opened in. */
export const namedNow = (subject: Subject): Subject => (isPractised(subject) ? { ...subject, ...words('session').practice } : subject);

export const subjectInWords = (subject: Subject | Unnamed): SubjectWords =>
  isNamed(subject) ? words('told').subject(namedNow(subject)) : words('told').unnamed(subject);
