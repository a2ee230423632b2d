// What a source file imports from its neighbours, and on which line: also types alone, what it hands on, what it reads on
// demand and what a type names by `import('…')`.
import { posix } from 'node:path';
import ts from 'typescript';

export interface Import {
  readonly file: string;
  /** From 1. */
  readonly line: number;
  readonly of: string;
  /** A type alone leaves nothing in what is built. */
  readonly how: 'at once' | 'on demand' | 'type';
}

/** `file` is its path from the repository's root, with slashes. Packages are left out: they are no rooms of ours. */
export function importsOf(file: string, text: string): Import[] {
  const kind = file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, false, kind);
  const found: Import[] = [];
  const visit = (node: ts.Node): void => {
    const named = nameIn(node);
    if (named?.text.startsWith('.')) {
      const line = source.getLineAndCharacterOfPosition(named.getStart(source)).line + 1;
      found.push({ file, line, of: posix.join(posix.dirname(file), named.text), how: howIn(node) });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function nameIn(node: ts.Node): ts.StringLiteralLike | null {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return literal(node.moduleSpecifier);
  if (ts.isImportTypeNode(node)) return ts.isLiteralTypeNode(node.argument) ? literal(node.argument.literal) : null;
  const onDemand = ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword;
  return onDemand ? literal(node.arguments[0]) : null;
}

function howIn(node: ts.Node): Import['how'] {
  if (ts.isImportTypeNode(node) || (ts.isImportDeclaration(node) && node.importClause?.isTypeOnly) || (ts.isExportDeclaration(node) && node.isTypeOnly))
    return 'type';
  return ts.isCallExpression(node) ? 'on demand' : 'at once';
}

const literal = (node: ts.Node | undefined): ts.StringLiteralLike | null => (node && ts.isStringLiteralLike(node) ? node : null);
