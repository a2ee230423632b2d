// Every place of a source that can be spoiled, in the order in which they are written. What is only a type has none.
import ts from 'typescript';
import type { Change, Finder } from './change.ts';
import { conditions } from './conditions.ts';
import { bounds, offByOne } from './numbers.ts';
import { edges, minAndMax, signs } from './operators.ts';

export interface Place extends Change {
  readonly file: string;
  /** From 1. */
  readonly line: number;
  readonly before: string;
}

const FINDERS: readonly Finder[] = [signs, edges, bounds, offByOne, minAndMax, conditions];

export function placesIn(file: string, text: string): Place[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TS);
  const found: Place[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) || ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return;
    for (const change of FINDERS.flatMap((find) => find(node, source)))
      found.push({
        ...change,
        file,
        line: source.getLineAndCharacterOfPosition(change.start).line + 1,
        before: text.slice(change.start, change.end),
      });
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

export const spoiled = (text: string, { start, end, after }: Change): string => text.slice(0, start) + after + text.slice(end);
