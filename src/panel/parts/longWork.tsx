// How far something is that takes a while: its sentence, and a bar.
import { useId } from 'preact/hooks';

export function LongWork({ said, share }: { readonly said: string; readonly share: number }) {
  const id = useId();
  return (
    <div class="stack">
      <label for={id} class="small">
        {said}
      </label>
      <progress id={id} max={1} value={share} />
    </div>
  );
}
