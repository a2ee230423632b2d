// Whose correction it is, in words.
import { isNamed } from '../../sweep/named.ts';
import type { Subject, Unnamed } from '../../sweep/plan.ts';
import { inMetres, inMillimetres } from './quantities.ts';

interface SubjectInWords {
  readonly lens: string;
  readonly details: string;
}

export function subjectInWords(subject: Subject | Unnamed): SubjectInWords {
  if (!isNamed(subject)) return unnamedInWords(subject);
  const { lens, body, focalLength, distance } = subject;
  return { lens, details: `${inMillimetres(focalLength)} at ${inMetres(distance)} \u00b7 ${body}` };
}

function unnamedInWords({ lens, body, focalLength }: Unnamed): SubjectInWords {
  const known = [focalLength === null ? null : inMillimetres(focalLength), body?.name ?? null].filter((part) => part !== null);
  return { lens: lens?.name ?? 'Not named yet', details: known.join(' \u00b7 ') || 'Name it before its result is left' };
}
