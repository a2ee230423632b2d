// How loud tones and speech are, beside the computer's own volume.
import { useId } from 'preact/hooks';
import { useSession } from '../useSession.ts';
import { words } from '../../words/catalogue.ts';

export function Loudness() {
  const session = useSession();
  const id = useId();
  const percent = Math.round(session.settings.value.loudness * 100);
  return (
    <div class="field">
      <label for={id}>{words('sound').loudnessAt(percent)}</label>
      <input
        id={id}
        type="range"
        min={0}
        max={100}
        step={5}
        value={percent}
        aria-valuetext={words('sound').percent(percent)}
        onInput={(event) => session.changeSettings({ loudness: event.currentTarget.valueAsNumber / 100 })}
      />
    </div>
  );
}
