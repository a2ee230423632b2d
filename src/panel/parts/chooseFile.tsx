// A file, chosen or dropped here.
import { useId, useState } from 'preact/hooks';

interface Props {
  readonly label: string;
  readonly hint: string;
  readonly accept: string;
  readonly onFile: (file: File) => void;
}

export function ChooseFile({ label, hint, accept, onFile }: Props) {
  const id = useId();
  const [over, setOver] = useState(false);
  const take = (files: FileList | null | undefined): void => {
    const file = files?.[0];
    if (file) onFile(file);
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
        onChange={(event) => {
          take(event.currentTarget.files);
          event.currentTarget.value = '';
        }}
      />
    </div>
  );
}
