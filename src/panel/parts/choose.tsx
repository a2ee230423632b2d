// One out of a list that may grow long. What is chosen is written over the list's own text, which no browser breaks over lines: so it
// is never cut, however narrow the panel or long the language.
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
      <div class="chooser">
        <select id={id} value={chosen} onChange={(event) => onChoose(event.currentTarget.value)}>
          {options.map(({ value, label: text }) => (
            <option key={value} value={value} selected={value === chosen}>
              {text}
            </option>
          ))}
        </select>
        <span aria-hidden="true">{options.find(({ value }) => value === chosen)?.label}</span>
      </div>
    </div>
  );
}
