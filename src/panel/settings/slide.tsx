// A number of seconds on a slider, with its value always in sight.
import { useId } from 'preact/hooks';
import { seconds, type Seconds } from '../../units.ts';

interface Props {
  readonly label: string;
  readonly note?: string;
  readonly unit: string;
  readonly from: number;
  readonly to: number;
  readonly value: Seconds;
  readonly onSlide: (value: Seconds) => void;
}

export function Slide({ label, note, unit, from, to, value, onSlide }: Props) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>
        {label}: {value} {unit}
      </label>
      <input
        id={id}
        type="range"
        min={from}
        max={to}
        step="1"
        value={value}
        aria-valuetext={`${value} ${unit}`}
        onInput={(event) => onSlide(seconds(event.currentTarget.valueAsNumber))}
      />
      {note && <span class="muted small">{note}</span>}
    </div>
  );
}
