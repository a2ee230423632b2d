// The microphone as a drawing, its shape telling what the word beside it says: filled with waves while it hears, crossed out
// while it is off, with a question while it is asked for, with a stroke through it while it is deaf.
import type { MarkState } from './markState.ts';

export function MarkShape({ is }: { readonly is: MarkState['is'] }) {
  return (
    <svg width="24" height="20" viewBox="0 0 24 20" aria-hidden="true" data-shape={is}>
      <rect x="9" y="1.5" width="6" height="9.5" rx="3" class="capsule" />
      <path d="M6.5 8.5a5.5 5.5 0 0 0 11 0M12 14v4M9 18h6" />
      {PARTS[is] && <path d={PARTS[is]} />}
    </svg>
  );
}

const SLASH = 'M4 18.5 20 1.5';
const PARTS: Partial<Record<MarkState['is'], string>> = {
  off: SLASH,
  begun: SLASH,
  deaf: 'M18 2.5l4.5 4.5M22.5 2.5 18 7M1.5 2.5l4.5 4.5M6 2.5 1.5 7',
  listening: 'M20 3a7 7 0 0 1 0 7.5M4 3a7 7 0 0 0 0 7.5',
  asking: 'M19.5 3a2 2 0 1 1 2 2.5v1M21.5 8.600v.1',
  speaking: 'M19 6.5h4M1 6.5h4',
};
