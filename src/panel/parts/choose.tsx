// One out of a list that may grow long.
import { useId } from 'preact/hooks';
import type { Option } from './pick.tsx';

interface Props {
  readonly label: string;
  readonly options: readonly Option<string>[];
  readonly chosen: string;
  readonly onChoose: (value: string) => void;
}

export function Choose({ label, options, chosen, onChoose }: Props) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select id={id} value={chosen} onChange={(event) => onChoose(event.currentTarget.value)}>
        {options.map(({ value, label: text }) => (
          <option key={value} value={value} selected={value === chosen}>
            {text}
          </option>
        ))}
      </select>
    </div>
  );
}
