// The sound check: one press plays the tones of a hold and a value, with loudness and pace of speech beside them, and what to
// do where nothing was heard.
import { useState } from 'preact/hooks';
import { Speaking } from '../settings/speaking.tsx';
import type { SoundHeard } from '../session/session.ts';
import { useSession } from '../useSession.ts';
import { words } from '../../words/catalogue.ts';
import { Loudness } from './loudness.tsx';

/** A quiet line until somebody said that they heard it. */
export function SoundLine() {
  const session = useSession();
  const [open, setOpen] = useState(false);
  const [playing, setPlaying] = useState(false);
  const [heard, setHeard] = useState<SoundHeard | null>(null);
  const play = async (): Promise<void> => {
    setOpen(true);
    setPlaying(true);
    setHeard(await session.trySound());
    setPlaying(false);
  };
  if (!open) {
    return (
      <button type="button" class="link" onClick={() => void play()}>
        {words('sound').offer}
      </button>
    );
  }
  return (
    <section class="card" aria-label={words('sound').title}>
      <output>{playing || !heard ? words('sound').playing : came(heard)}</output>
      <Loudness />
      {session.settings.value.voice.speak && <Speaking />}
      <SwitchOn />
      <button type="button" disabled={playing} onClick={() => void play()}>
        {words('sound').again}
      </button>
      <button type="button" class="chief" onClick={() => session.changeSettings({ soundChecked: true })}>
        {words('sound').done}
      </button>
    </section>
  );
}

/** In the settings, where loudness and pace stand already. */
export function SoundCheck() {
  const session = useSession();
  const [playing, setPlaying] = useState(false);
  const [heard, setHeard] = useState<SoundHeard | null>(null);
  const play = async (): Promise<void> => {
    setPlaying(true);
    setHeard(await session.trySound());
    setPlaying(false);
    session.changeSettings({ soundChecked: true });
  };
  return (
    <>
      <Loudness />
      <button type="button" disabled={playing} onClick={() => void play()}>
        {words('sound').play}
      </button>
      <output class="muted small">
        {playing ? words('sound').playing : heard && came(heard)}
      </output>
      <SwitchOn />
    </>
  );
}

function SwitchOn() {
  const session = useSession();
  const { voice, sound } = session.settings.value;
  if (voice.speak || sound) return null;
  return (
    <>
      <p>{words('sound').off}</p>
      <button type="button" onClick={() => session.changeSettings({ sound: true, voice: { speak: true } })}>
        {words('sound').switchOn}
      </button>
    </>
  );
}

function came({ tones, speech }: SoundHeard): string {
  if (tones === 'off' && speech === 'off') return words('sound').off;
  if (tones === 'stands still') return words('sound').standsStill;
  if (speech === 'no voice') return words('sound').mute;
  if (speech === 'off') return words('sound').tonesOnly;
  return tones === 'off' ? words('sound').speechOnly : words('sound').heard;
}
