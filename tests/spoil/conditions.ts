// Conditions that are dropped: one side of `and` and `or`, a guard that always or never holds, a choice that is none, a `not`.
import ts from 'typescript';
import { instead, type Finder } from './change.ts';

const { SyntaxKind } = ts;

export const conditions: Finder = (node, source) => {
  const becomes = (part: ts.Node, ...after: string[]) => after.map((text) => instead('condition', part, source, text));
  if (ts.isBinaryExpression(node) && (node.operatorToken.kind === SyntaxKind.AmpersandAmpersandToken || node.operatorToken.kind === SyntaxKind.BarBarToken))
    return becomes(node, whole(node.left, source), whole(node.right, source));
  if (ts.isIfStatement(node)) return becomes(node.expression, 'true', 'false');
  if (ts.isConditionalExpression(node)) return becomes(node, whole(node.whenTrue, source), whole(node.whenFalse, source));
  if (ts.isPrefixUnaryExpression(node) && node.operator === SyntaxKind.ExclamationToken) return becomes(node, whole(node.operand, source));
  return [];
};

/** In brackets, so that it stays one whatever it now stands beside. */
const whole = (node: ts.Expression, source: ts.SourceFile): string => (isOne(node) ? node.getText(source) : `(${node.getText(source)})`);

const isOne = (node: ts.Expression): boolean =>
  ts.isIdentifier(node) ||
  ts.isLiteralExpression(node) ||
  ts.isParenthesizedExpression(node) ||
  ts.isCallExpression(node) ||
  ts.isPropertyAccessExpression(node);
