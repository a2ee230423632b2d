// Something that is on or off.
interface Props {
  readonly label: string;
  readonly note?: string;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
}

export function Tick({ label, note, on, onChange }: Props) {
  return (
    <label class="option">
      <input type="checkbox" checked={on} onChange={(event) => onChange(event.currentTarget.checked)} />
      <span>
        {label}
        {note && <small>{note}</small>}
      </span>
    </label>
  );
}
