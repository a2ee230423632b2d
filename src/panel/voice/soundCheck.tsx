// The sound check: one press plays the tones of a hold and a value, with loudness and pace of speech beside them, and what to
// do where nothing was heard.
import { useState } from 'preact/hooks';
import { Speaking } from '../settings/speaking.tsx';
import type { SoundHeard } from '../session/session.ts';
import { useSession } from '../useSession.ts';
import { words } from '../../words/catalogue.ts';
import { voiceNamed } from '../../words/named.ts';
import { Loudness } from './loudness.tsx';

/** `quiet`: one line until it is pressed, and gone once it is done. Elsewhere the pace of speech stands beside it already. */
export function SoundCheck({ quiet = false }: { readonly quiet?: boolean }) {
  const session = useSession();
  const say = words('sound');
  const [came, setCame] = useState<SoundHeard | 'nothing yet' | 'playing'>('nothing yet');
  const { voice, sound } = session.settings.value;
  const silent = !voice.speak && !sound;
  const play = async (): Promise<void> => {
    setCame('playing');
    setCame(await session.trySound());
  };
  if (quiet && came === 'nothing yet') {
    return (
      <button type="button" class="link" onClick={() => void play()}>
        {say.offer}
      </button>
    );
  }
  return (
    <section class={quiet ? 'card' : 'stack'} aria-label={say.title}>
      <output>{silent ? say.off : came === 'nothing yet' ? '' : came === 'playing' ? say.playing : sentenceOf(came)}</output>
      <Loudness />
      {quiet && voice.speak && <Speaking />}
      {silent && (
        <button type="button" onClick={() => session.changeSettings({ sound: true, voice: { speak: true } })}>
          {say.switchOn}
        </button>
      )}
      <button type="button" disabled={came === 'playing'} onClick={() => void play()}>
        {say.play}
      </button>
      {quiet && (
        <button type="button" class="chief" onClick={() => session.changeSettings({ soundChecked: true })}>
          {say.done}
        </button>
      )}
    </section>
  );
}

function sentenceOf({ tones, speech }: SoundHeard): string {
  const say = words('sound');
  if (tones === 'stands still') return say.standsStill;
  if (speech === 'no voice') return say.mute(voiceNamed());
  if (speech === 'off') return say.tonesOnly;
  return tones === 'off' ? say.speechOnly : say.heard;
}
