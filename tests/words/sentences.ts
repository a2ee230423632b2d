// Every sentence of the catalogue, found by the types of its areas: those that stand as they are, and those that are made of what they are
// told, with values to tell them.
import ts from 'typescript';
import type { Area } from '../../src/words/areas.ts';
import { words } from '../../src/words/catalogue.ts';
import { firstWords } from '../../src/words/first.ts';
import { programOf } from './looseText.ts';
import { samplesBy } from './samples.ts';

export interface Sentence {
  readonly area: Place;
  /** Where it stands in its area: `next.enter`. */
  readonly at: string;
  /** What it can be told; one empty row for a sentence that stands as it is. */
  readonly told: readonly (readonly unknown[])[];
}

/** Also those that come before the catalogue can be read. */
type Place = Area | 'first';

export function sentencesByType(): readonly Sentence[] {
  const program = programOf('tsconfig/pure.json');
  const checker = program.getTypeChecker();
  const declared = (file: string, name: string): ts.InterfaceDeclaration => {
    const source = program.getSourceFiles().find(({ fileName }) => fileName.endsWith(file));
    const found = source?.statements.find((one): one is ts.InterfaceDeclaration => ts.isInterfaceDeclaration(one) && one.name.text === name);
    if (!found) throw new Error(`${name} is not declared in ${file}.`);
    return found;
  };
  const [areas, first] = [declared('/src/words/areas.ts', 'Words'), declared('/src/words/firstWords.ts', 'FirstWords')];
  const { argumentsFor } = samplesBy(checker, areas);
  const found: Sentence[] = [];
  const walk = (type: ts.Type, area: Place, path: readonly string[]): void => {
    const whole = checker.getNonNullableType(type);
    const [signature] = whole.getCallSignatures();
    const isLeaf = (whole.flags & ts.TypeFlags.StringLike) !== 0 || checker.isArrayType(whole) || whole.isUnion();
    if (signature || isLeaf) found.push({ area, at: path.join('.'), told: signature ? argumentsFor(signature) : [[]] });
    else for (const one of checker.getPropertiesOfType(whole)) walk(checker.getTypeOfSymbolAtLocation(one, areas), area, [...path, one.getName()]);
  };
  for (const area of checker.getPropertiesOfType(checker.getTypeAtLocation(areas))) {
    walk(checker.getTypeOfSymbolAtLocation(area, areas), area.getName() as Area, []);
  }
  walk(checker.getTypeAtLocation(first), 'first', []);
  return found;
}

/** What it says in the languages in use, once for each row that it can be told. */
export const saidBy = (sentence: Sentence): readonly (string | null)[] =>
  sentence.told.map((told) => textOf(sentence.area === 'first' ? firstWords() : words(sentence.area), sentence, told));

/** What it says in these words: all that is text, joined; null where it cannot be made of what it was told. */
function textOf(words: unknown, { at }: Sentence, told: readonly unknown[]): string | null {
  const found = at.split('.').reduce<unknown>((inside, name) => (inside as Record<string, unknown> | undefined)?.[name], words);
  try {
    return typeof found === 'function' ? textIn((found as (...all: readonly unknown[]) => unknown)(...told)) : textIn(found);
  } catch {
    return null;
  }
}

const textIn = (said: unknown): string => {
  if (typeof said === 'string') return said;
  if (typeof said !== 'object' || said === null) return '';
  return Object.values(said).map(textIn).filter(Boolean).join('\n');
};
