// Bounds that are moved, and numbers that are off by one. A whole number moves by one; a bound that is a fraction, or that
// another file gives, is doubled.
import ts from 'typescript';
import { instead, type Change, type Finder, type Kind } from './change.ts';

const { SyntaxKind } = ts;

const COMPARES = new Set([SyntaxKind.LessThanToken, SyntaxKind.LessThanEqualsToken, SyntaxKind.GreaterThanToken, SyntaxKind.GreaterThanEqualsToken]);
const BOUNDING = new Set(['min', 'max', 'minValue', 'maxValue', 'minLength', 'maxLength']);
const COUNTING = new Set(['slice', 'at', 'substring', 'splice', 'subarray', 'fill', 'repeat']);

export const bounds: Finder = (node, source) => {
  if (ts.isBinaryExpression(node) && COMPARES.has(node.operatorToken.kind)) return [node.left, node.right].flatMap((side) => moved('bound', side, source));
  const name = ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression) ? node.expression.name.text : '';
  return ts.isCallExpression(node) && BOUNDING.has(name) ? node.arguments.flatMap((each) => moved('bound', each, source)) : [];
};

export const offByOne: Finder = (node, source) => {
  if (!ts.isNumericLiteral(node) || !Number.isInteger(Number(node.text)) || !counts(node)) return [];
  return [instead('off by one', node, source, String(Number(node.text) + 1))];
};

/** Added or taken away, the index of an element, where a slice begins or ends, where a loop begins. */
function counts(node: ts.NumericLiteral): boolean {
  const of = ts.isPrefixUnaryExpression(node.parent) ? node.parent : node;
  const { parent } = of;
  if (ts.isBinaryExpression(parent)) return parent.operatorToken.kind === SyntaxKind.PlusToken || parent.operatorToken.kind === SyntaxKind.MinusToken;
  if (ts.isElementAccessExpression(parent)) return true;
  if (ts.isCallExpression(parent)) return ts.isPropertyAccessExpression(parent.expression) && COUNTING.has(parent.expression.name.text);
  return ts.isVariableDeclaration(parent) && ts.isForStatement(parent.parent.parent);
}

function moved(kind: Kind, node: ts.Expression, source: ts.SourceFile): Change[] {
  if (ts.isNumericLiteral(node)) return [instead(kind, node, source, movedNumber(node.text))];
  if (!ts.isIdentifier(node) || !/^[A-Z][A-Z0-9_]+$/.test(node.text)) return [];
  return [instead(kind, node, source, isWhole(node.text, source) ? `(${node.text} + 1)` : `(2 * ${node.text})`)];
}

const movedNumber = (text: string): string => String(Number.isInteger(Number(text)) ? Number(text) + 1 : 2 * Number(text));

const isWhole = (name: string, source: ts.SourceFile): boolean =>
  source.statements.some(
    (statement) =>
      ts.isVariableStatement(statement) &&
      statement.declarationList.declarations.some(
        ({ name: declared, initializer }) =>
          declared.getText(source) === name && initializer !== undefined && ts.isNumericLiteral(initializer) && Number.isInteger(Number(initializer.text)),
      ),
  );
