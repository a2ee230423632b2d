// How a press looks: one dot, two dots, a bar.
import type { Press } from '../../sweep/inputs.ts';
import { PRESS } from '../../voice/vocabulary/en.ts';

const SHAPE: Record<Press, string> = { short: 'M8 5h0', double: 'M4 5h0M12 5h0', long: 'M3 5h10' };

export function PressShape({ press }: { readonly press: Press }) {
  return (
    <svg class="press" width="16" height="10" viewBox="0 0 16 10" role="img" aria-label={PRESS[press]}>
      <path d={SHAPE[press]} stroke="currentColor" stroke-width="6" stroke-linecap="round" />
    </svg>
  );
}
