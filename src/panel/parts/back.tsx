// Leads back.
import { firstWords } from '../../words/first.ts';

interface Props {
  readonly label?: string;
  readonly onBack: () => void;
}

export function Back({ label = firstWords().back, onBack }: Props) {
  return (
    <button type="button" class="back" aria-label={label} onClick={onBack}>
      <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
        <path d="M10 2 4 8l6 6" fill="none" stroke="currentColor" stroke-width="2" />
      </svg>
    </button>
  );
}
