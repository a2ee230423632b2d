// Whose correction it is, in words, whether it has a name already or not.
import { isNamed } from '../../sweep/named.ts';
import type { Subject, Unnamed } from '../../sweep/plan.ts';
import { words } from '../../words/catalogue.ts';
import type { SubjectWords } from '../../words/toldWords.ts';
import { namedNow } from './namedNow.ts';

export const subjectInWords = (subject: Subject | Unnamed): SubjectWords =>
  isNamed(subject) ? words('told').subject(namedNow(subject)) : words('told').unnamed(subject);
