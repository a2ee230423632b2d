// A file, or several, chosen or dropped here.
import { useId, useState } from 'preact/hooks';

interface Props {
  readonly label: string;
  readonly hint: string;
  readonly accept: string;
  /** Several at once; `onFile` is told each of them. */
  readonly many?: true;
  readonly onFile: (file: File) => void;
}

export function ChooseFile({ label, hint, accept, many, onFile }: Props) {
  const id = useId();
  const [over, setOver] = useState(false);
  const take = (files: FileList | null | undefined): void => {
    for (const file of [...(files ?? [])].slice(0, many ? Infinity : 1)) onFile(file);
  };
  return (
    <div
      class={`field file${over ? ' over' : ''}`}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        take(event.dataTransfer?.files);
      }}
    >
      <label for={id}>{label}</label>
      <span class="muted small">{hint}</span>
      <input
        id={id}
        type="file"
        accept={accept}
        multiple={many ?? false}
        onChange={(event) => {
          take(event.currentTarget.files);
          event.currentTarget.value = '';
        }}
      />
    </div>
  );
}
