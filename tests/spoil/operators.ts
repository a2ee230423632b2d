// Signs that turn, comparisons that take their edge in or leave it out, the lesser taken for the greater.
import ts from 'typescript';
import { instead, type Finder } from './change.ts';

const { SyntaxKind } = ts;

const TURNED: Partial<Record<ts.SyntaxKind, string>> = {
  [SyntaxKind.PlusToken]: '-',
  [SyntaxKind.MinusToken]: '+',
  [SyntaxKind.PlusEqualsToken]: '-=',
  [SyntaxKind.MinusEqualsToken]: '+=',
};

const WITH_OR_WITHOUT: Partial<Record<ts.SyntaxKind, string>> = {
  [SyntaxKind.LessThanToken]: '<=',
  [SyntaxKind.LessThanEqualsToken]: '<',
  [SyntaxKind.GreaterThanToken]: '>=',
  [SyntaxKind.GreaterThanEqualsToken]: '>',
};

/** A loop's own stride is left: turned, it would never end, and no assertion could say so. */
export const signs: Finder = (node, source) => {
  if (ts.isPrefixUnaryExpression(node) && node.operator === SyntaxKind.MinusToken) return [instead('sign', node, source, node.operand.getText(source))];
  if (!ts.isBinaryExpression(node) || isStride(node)) return [];
  const turned = TURNED[node.operatorToken.kind];
  return turned === undefined ? [] : [instead('sign', node.operatorToken, source, turned)];
};

export const edges: Finder = (node, source) => {
  if (!ts.isBinaryExpression(node)) return [];
  const other = WITH_OR_WITHOUT[node.operatorToken.kind];
  return other === undefined ? [] : [instead('edge', node.operatorToken, source, other)];
};

export const minAndMax: Finder = (node, source) => {
  if (!ts.isPropertyAccessExpression(node) || node.expression.getText(source) !== 'Math') return [];
  const swapped = { min: 'max', max: 'min' }[node.name.text];
  return swapped === undefined ? [] : [instead('min and max', node.name, source, swapped)];
};

const isStride = (node: ts.Node): boolean => ts.isForStatement(node.parent) && node.parent.incrementor === node;
