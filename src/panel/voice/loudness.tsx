// How loud tones and speech are, beside the computer's own volume.
import { useId } from 'preact/hooks';
import { useSession } from '../useSession.ts';
import { SOUND } from './words.ts';

export function Loudness() {
  const session = useSession();
  const id = useId();
  const percent = Math.round(session.settings.value.loudness * 100);
  return (
    <div class="field">
      <label for={id}>
        {SOUND.loudness}: {SOUND.percent(percent)}
      </label>
      <input
        id={id}
        type="range"
        min={0}
        max={100}
        step={5}
        value={percent}
        aria-valuetext={SOUND.percent(percent)}
        onInput={(event) => session.changeSettings({ loudness: event.currentTarget.valueAsNumber / 100 })}
      />
      {percent === 0 && <span class="muted small">{SOUND.loudnessAt0}</span>}
    </div>
  );
}
