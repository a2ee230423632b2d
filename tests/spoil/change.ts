// One small change of a source, as a careless hand might make it: what a test must notice.
import type ts from 'typescript';

export const KINDS = ['sign', 'edge', 'bound', 'off by one', 'min and max', 'condition'] as const;
export type Kind = (typeof KINDS)[number];

export interface Change {
  readonly kind: Kind;
  /** What of the text goes, as offsets. */
  readonly start: number;
  readonly end: number;
  readonly after: string;
}

/** What of a kind can be done at this very node, not below it. */
export type Finder = (node: ts.Node, source: ts.SourceFile) => readonly Change[];

export const instead = (kind: Kind, node: ts.Node, source: ts.SourceFile, after: string): Change => ({
  kind,
  start: node.getStart(source),
  end: node.getEnd(),
  after,
});
