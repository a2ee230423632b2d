// Where something may hurt, break or mislead.
import type { Caution } from '../../optics/setUp/caution.ts';
import { words } from '../../words/catalogue.ts';
import { space } from '../../words/run.ts';

export function Cautions({ all }: { readonly all: readonly Caution[] }) {
  if (all.length === 0) return null;
  const { title, takeCare, caution } = words('cautions');
  return (
    <ul class="cautions small" aria-label={title}>
      {all.map((one) => (
        <li key={one.is}>
          {one.may === 'hurt' && (
            <strong>
              {takeCare}
              {space()}
            </strong>
          )}
          {caution(one)}
        </li>
      ))}
    </ul>
  );
}
