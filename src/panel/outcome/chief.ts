// The one step that matters at a result, and so its chief button.
import type { Finding } from '../../sweep/finding.ts';

export type Chief = 'mark' | 'next lens' | 'what to check' | 'measure the width';

interface Circumstances {
  readonly practice: boolean;
  /** The value is marked as entered already. */
  readonly marked: boolean;
  /** The band's width can be measured with the focus set aside. */
  readonly measurable: boolean;
  readonly holds: number;
}

export function chiefOf(finding: Finding, { practice, marked, measurable, holds }: Circumstances): Chief {
  const enters = !practice && !marked;
  switch (finding.is) {
    case 'sure':
      return enters ? 'mark' : 'next lens';
    case 'doubtful':
      return 'what to check';
    case 'bounded':
      if (measurable) return 'measure the width';
      if (finding.outcome.found !== 'carried over') return 'what to check';
      return finding.enter !== null && enters ? 'mark' : 'next lens';
    case 'nothing':
      return holds > 0 ? 'what to check' : 'next lens';
  }
}
