// Where something may hurt, break or mislead.
import type { Caution } from '../../optics/setUp/caution.ts';

export function Cautions({ all }: { readonly all: readonly Caution[] }) {
  if (all.length === 0) return null;
  return (
    <ul class="cautions small" aria-label="Cautions">
      {all.map(({ may, show }) => (
        <li key={show}>
          {may === 'hurt' && <strong>Take care. </strong>}
          {show}
        </li>
      ))}
    </ul>
  );
}
