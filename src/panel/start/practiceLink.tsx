// The way to the practice camera: a finder with its target and its light.
import { useId } from 'preact/hooks';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';

export function PracticeLink() {
  const { way } = useSurroundings();
  const note = useId();
  const say = words('start').practice;
  return (
    <div class="practice-link">
      <svg viewBox="0 0 64 44" width="64" height="44" aria-hidden="true">
        <rect class="frame" x="1" y="1" width="62" height="42" rx="7" />
        <path class="target" d="M20 12v20M26 12v20M32 12v20M38 12v20M44 12v20" />
        <path class="corners" d="M14 14V9h6M50 14V9h-6M14 30v5h6M50 30v5h-6" />
        <circle class="lamp" cx="57" cy="37" r="3.4" />
      </svg>
      <span>
        <button type="button" class="link" aria-describedby={note} onClick={() => way.go({ at: 'practice' })}>
          {say.open}
        </button>
        <small id={note}>{say.note}</small>
      </span>
    </div>
  );
}
