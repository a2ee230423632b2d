// A correction in figures to be read from across the room. The sign is a little smaller, so that the digits can be larger.
import { writeSteps } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';

interface Props {
  readonly label: string;
  readonly value: Steps;
}

export function BigValue({ label, value }: Props) {
  const written = writeSteps(value);
  const [, sign = '', digits = ''] = /^(\D?)(\d+)$/.exec(written) ?? [];
  return (
    <output class="value" aria-label={label} aria-live="off" data-length={written.length}>
      {sign && <span class="sign">{sign}</span>}
      {digits}
    </output>
  );
}
