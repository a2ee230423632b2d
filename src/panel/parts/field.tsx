// One typed field: its label, what was typed, a hint, and one sentence when it does not fit.
import { useId } from 'preact/hooks';

interface Props {
  readonly label: string;
  readonly text: string;
  readonly fault?: string | undefined;
  /** The id of an element that shows the fault where there is more room than below the field. */
  readonly faultAt?: string;
  readonly hint?: string;
  /** What counts while nothing is typed. */
  readonly placeholder?: string;
  readonly numeric?: boolean;
  readonly onTyped: (text: string) => void;
}

export function Field({ label, text, fault, faultAt, hint, placeholder, numeric = false, onTyped }: Props) {
  const id = useId();
  const notes = [hint && `${id}-hint`, fault && (faultAt ?? `${id}-fault`)].filter(Boolean).join(' ');
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode={numeric ? 'decimal' : 'text'}
        autocomplete="off"
        placeholder={placeholder}
        value={text}
        aria-invalid={fault ? 'true' : 'false'}
        aria-describedby={notes || undefined}
        onInput={(event) => onTyped(event.currentTarget.value)}
      />
      {hint && (
        <span id={`${id}-hint`} class="muted small">
          {hint}
        </span>
      )}
      {fault && !faultAt && (
        <span id={`${id}-fault`} class="fault small">
          {fault}
        </span>
      )}
    </div>
  );
}
