// The names that a file gives to others: what it declares and exports. What it only hands on is named elsewhere.
import ts from 'typescript';

export function exportedNames(file: string, text: string): string[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2023, false);
  const names = source.statements.flatMap((statement) => {
    if (!ts.canHaveModifiers(statement)) return [];
    const given = ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
    return given ? namesIn(statement) : [];
  });
  return [...new Set(names)];
}

function namesIn(statement: ts.Statement): string[] {
  if (ts.isVariableStatement(statement)) return statement.declarationList.declarations.flatMap(({ name }) => bound(name));
  const named = statement as ts.Statement & { readonly name?: ts.Identifier };
  return named.name ? [named.name.text] : [];
}

const bound = (name: ts.BindingName): string[] =>
  ts.isIdentifier(name) ? [name.text] : name.elements.flatMap((element) => (ts.isOmittedExpression(element) ? [] : bound(element.name)));

/** Each name that more than one file declares and exports, with those files. */
export function sharedNames(files: Readonly<Record<string, string>>): string[] {
  const homes = new Map<string, string[]>();
  for (const [file, text] of Object.entries(files)) {
    for (const name of exportedNames(file, text)) homes.set(name, [...(homes.get(name) ?? []), file]);
  }
  return [...homes].flatMap(([name, list]) => (list.length > 1 ? [`${name}: ${list.join(', ')}`] : [])).sort();
}
