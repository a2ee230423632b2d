// How a press looks: one dot, two dots, a bar; and a bar with two dots after it.
import type { Gesture } from '../../sweep/understood.ts';
import { words } from '../../words/catalogue.ts';

const SHAPE: Record<Gesture, string> = { short: 'M8 5h0', double: 'M4 5h0M12 5h0', long: 'M3 5h10', 'kept, double': 'M3 5h8M18 5h0M26 5h0' };

export function PressShape({ press }: { readonly press: Gesture }) {
  const width = press === 'kept, double' ? 30 : 16;
  return (
    <svg
      class="press"
      width={width}
      height="10"
      viewBox={`0 0 ${width} 10`}
      role="img"
      aria-label={press === 'kept, double' ? words('firstHold').keptDouble : words('sweep').press.is[press]}
    >
      <path d={SHAPE[press]} stroke="currentColor" stroke-width="6" stroke-linecap="round" />
    </svg>
  );
}
