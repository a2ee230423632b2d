// One out of a few, all in sight, each with a sentence on what it means.
import { useId } from 'preact/hooks';

export interface Option<Value extends string> {
  readonly value: Value;
  readonly label: string;
  readonly note?: string;
}

interface Props<Value extends string> {
  readonly legend: string;
  readonly options: readonly Option<Value>[];
  readonly chosen: Value;
  readonly onChoose: (value: Value) => void;
}

export function Pick<Value extends string>({ legend, options, chosen, onChoose }: Props<Value>) {
  const group = useId();
  return (
    <fieldset>
      <legend>{legend}</legend>
      {options.map(({ value, label, note }) => (
        <label key={value} class="option">
          <input type="radio" name={group} value={value} checked={value === chosen} onChange={() => onChoose(value)} />
          <span>
            {label}
            {note && <small>{note}</small>}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
