// A number of seconds on a slider. The value stands in its label, so that it is always in sight.
import { useId } from 'preact/hooks';
import { seconds, type Seconds } from '../../units.ts';

interface Props {
  readonly label: string;
  /** The value alone, for those who hear the screen. */
  readonly says: string;
  readonly note?: string;
  readonly from: number;
  readonly to: number;
  readonly value: Seconds;
  readonly onSlide: (value: Seconds) => void;
}

export function Slide({ label, says, note, from, to, value, onSlide }: Props) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="range"
        min={from}
        max={to}
        step="1"
        value={value}
        aria-valuetext={says}
        onInput={(event) => onSlide(seconds(event.currentTarget.valueAsNumber))}
      />
      {note && <span class="muted small">{note}</span>}
    </div>
  );
}
