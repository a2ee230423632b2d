// The sentence beside each picture, as it stands in the listing of a language: it is the picture's caption there, too.
import { readFileSync } from 'node:fs';

/** Sentences by the names of the pictures. */
export function captionsIn(language: string): ReadonlyMap<string, string> {
  const [, part = ''] = /\n## Pictures\n([\s\S]*?)(?=\n## |$)/.exec(readFileSync(`store/listing/${language}.md`, 'utf8')) ?? [];
  return new Map([...part.matchAll(/^- (\w+): (.+)$/gm)].map(([, name = '', sentence = '']) => [name, sentence]));
}
