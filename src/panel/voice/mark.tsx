// The microphone mark in the head of a screen. Where voice is off and sound is on it is all there is to read; everything
// else it may have to say is read when it is wanted.
import { late } from '../parts/late.tsx';
import { useSurroundings } from '../useSession.ts';
import { firstWords } from '../../words/first.ts';

const MarkTold = late(async () => (await import('./markTold.tsx')).MarkTold, 'voice', 'sound');

/** Capsule, bracket and foot. */
const MICROPHONE = 'M9 4.5a3 3 0 0 1 6 0V8a3 3 0 0 1-6 0zM6.5 8.5a5.5 5.5 0 0 0 11 0M12 14v4M9 18h6';

export function VoiceMark() {
  const { session, way } = useSurroundings();
  const { voice, sound } = session.settings.value;
  const isQuiet = voice.listen === 'off' && voice.wish === 'none' && (voice.speak || sound) && !session.mute.value;
  if (!isQuiet) return <MarkTold />;
  return (
    <button type="button" class="voicemark" data-voice="off" aria-label={firstWords().mark.press} onClick={() => way.go({ at: 'voice' })}>
      <svg width="24" height="20" viewBox="0 0 24 20" aria-hidden="true">
        <path d={`${MICROPHONE}M4 18.5 20 1.5`} />
      </svg>
      <span>{firstWords().mark.word}</span>
    </button>
  );
}
