// Every sentence that is shown or said, by area and language. An area is read when the screen that needs it is; its
// interface says which sentences there are, so that a language in which one is missing does not compile.
import { signal } from '@preact/signals';
import type { Area, Words } from './areas.ts';

export type { Area };

const read = signal<Partial<Words>>({});

/** Reads these areas of the language in use; at once where they are there already. */
export async function readWords(...areas: readonly Area[]): Promise<void> {
  const wanted = areas.filter((area) => read.peek()[area] === undefined);
  if (wanted.length === 0) return;
  const { LANGUAGES } = await import('./areas.ts');
  const found = await Promise.all(wanted.map(async (area) => [area, (await LANGUAGES.en[area]()).words] as const));
  read.value = { ...read.peek(), ...Object.fromEntries(found) };
}

/** The sentences of an area that has been read. Throws for one that has not: whoever shows it reads it first. */
export function words<Name extends Area>(area: Name): Words[Name] {
  const found = read.value[area];
  if (found === undefined) throw new Error(`The words of “${area}” are used before they are read.`);
  return found;
}
