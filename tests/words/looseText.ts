// Finds English that stands outside the catalogue: text in markup, labels, and strings that are sentences or parts of one.
// The compiler's own parser and types tell a word of ours from an id: a string whose place allows only certain strings is
// an id.
import { relative } from 'node:path';
import ts from 'typescript';

export interface Loose {
  /** `file:line`, from the root of the project. */
  readonly at: string;
  readonly text: string;
}

/** Attributes of markup that nobody reads. */
const SILENT =
  /^(class|elementtiming|type|role|scope|id|for|name|href|rel|src|d|viewBox|xmlns|fill|stroke.*|text-anchor|inputMode|method|accept|autocomplete|aria-(live|labelledby|describedby|controls|hidden|invalid|current|expanded|pressed|orientation)|data-.*|key|value|min|max|step|low|high|x|y|r|width|height|rx|transform|points|preserveAspectRatio|overflow|offset|at|by|as|lang|dir|target|pathLength|mask|clip-path|marker-.*|dominant-baseline)$/;

/** Takes a selector of the style sheet's kind. */
const SELECTS = /\.(closest|matches|querySelector(All)?)$/;

/** A mark between two pieces: each language has its own, and its own blank before it. */
const GLUE = /^\s*[:;,.!?](\s|$)/u;
const WORDY = /\p{L}{2,}/u;
/** A sentence, or a part of one: more than one word, or one that begins like a label. */
const ENGLISH = /\p{L}{2,}[^\p{L}]*[ ,].*\p{L}{2,}|^\s*\p{Lu}\p{Ll}{2,}\b/u;

export function looseIn(program: ts.Program, files: readonly ts.SourceFile[], root: string): Loose[] {
  const checker = program.getTypeChecker();
  const found: Loose[] = [];
  for (const file of files) {
    const note = (node: ts.Node, text: string): void => {
      const { line } = file.getLineAndCharacterOfPosition(node.getStart(file));
      found.push({ at: `${relative(root, file.fileName)}:${line + 1}`, text: text.trim().replace(/\s+/g, ' ') });
    };
    const visit = (node: ts.Node): void => {
      if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
      // What goes wrong in the program itself is told to whoever mends it.
      if (ts.isNewExpression(node) && node.expression.getText(file).endsWith('Error')) return;
      if (ts.isCallExpression(node) && /^(console\.|import$)/.test(node.expression.getText(file))) return;
      if (ts.isStringLiteralLike(node) && isSelector(node, file)) return;
      if (ts.isJsxText(node) && (WORDY.test(node.text) || GLUE.test(node.text))) note(node, node.text);
      else if (ts.isJsxAttribute(node) && node.initializer && ts.isStringLiteral(node.initializer)) {
        if (!SILENT.test(node.name.getText(file)) && WORDY.test(node.initializer.text) && !isChosen(node.initializer, checker))
          note(node, node.initializer.text);
        return;
      } else if (ts.isTemplateExpression(node)) {
        const text = [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('…');
        if (WORDY.test(text) && ENGLISH.test(text.replaceAll('…', ' x ')) && !isSilent(node, file)) note(node, text);
      } else if (ts.isStringLiteralLike(node) && ENGLISH.test(node.text) && !isId(node, checker, file)) note(node, node.text);
      ts.forEachChild(node, visit);
    };
    visit(file);
  }
  return found;
}

/** Does the string stand in an attribute that nobody reads? */
function isSilent(node: ts.Node, file: ts.SourceFile): boolean {
  for (let at: ts.Node | undefined = node; at && !ts.isBlock(at); at = at.parent) {
    if (ts.isJsxAttribute(at)) return SILENT.test(at.name.getText(file));
  }
  return false;
}

/** Does it say which elements are looked for? */
const isSelector = ({ parent }: ts.Node, file: ts.SourceFile): boolean =>
  ts.isCallExpression(parent) && /\.(querySelector(All)?(<[^()]*>)?|closest|matches)$/.test(parent.expression.getText(file));

function isId(node: ts.StringLiteralLike, checker: ts.TypeChecker, file: ts.SourceFile): boolean {
  const { parent } = node;
  if (ts.isPropertyAssignment(parent) && parent.name === node) return true;
  if (ts.isElementAccessExpression(parent) || ts.isCaseClause(parent) || ts.isLiteralTypeNode(parent)) return true;
  if (ts.isBinaryExpression(parent) && /^[!=]==?$/.test(parent.operatorToken.getText(file))) return true;
  if (ts.isCallExpression(parent) && SELECTS.test(parent.expression.getText(file))) return true;
  if (isSilent(node, file)) return true;
  if (isChosen(node, checker)) return true;
  for (let at: ts.Node = parent; at; at = at.parent) {
    // `as const`, and a list or record of ids that a type is made of.
    if (ts.isAsExpression(at) && at.type.getText(file) === 'const') return !/[.?!,]|^\p{Lu}/u.test(node.text);
    if (ts.isStatement(at)) return false;
  }
  return false;
}

/** Does its place allow only certain strings? */
function isChosen(node: ts.StringLiteralLike, checker: ts.TypeChecker): boolean {
  const contextual = checker.getContextualType(node);
  return contextual !== undefined && allows(contextual);
}

const allows = (type: ts.Type): boolean =>
  type.isStringLiteral() || (type.isUnionOrIntersection() && type.types.some(allows)) || (type.flags & ts.TypeFlags.TemplateLiteral) !== 0;

export function programOf(config: string): ts.Program {
  const read = ts.getParsedCommandLineOfConfigFile(config, {}, { ...ts.sys, onUnRecoverableConfigFileDiagnostic: () => undefined });
  if (!read) throw new Error(`${config} cannot be read.`);
  return ts.createProgram(read.fileNames, read.options);
}
