// The settings: how the person wants to work, and how the panel speaks, sounds and listens. Each takes effect at once.
import { Heading } from '../parts/heading.tsx';
import { Tick } from '../parts/tick.tsx';
import { MannerPick } from '../start/mannerPick.tsx';
import { useSurroundings } from '../useSession.ts';
import { Listening } from './listening.tsx';
import { PacePick } from './pacePick.tsx';
import { Slide } from './slide.tsx';

export function SettingsScreen() {
  const { session, way } = useSurroundings();
  const { manner, voice, sound } = session.settings.value;
  return (
    <>
      <Heading onBack={() => way.back()}>Settings</Heading>
      <section class="card" aria-labelledby="working">
        <h2 id="working">Working</h2>
        <MannerPick />
        <Slide
          label="Hold time"
          note="Five seconds is common practice."
          unit="s"
          from={3}
          to={15}
          value={manner.holdTime}
          onSlide={(holdTime) => session.changeSettings({ manner: { holdTime } })}
        />
        <PacePick />
      </section>
      <section class="card" aria-labelledby="sound">
        <h2 id="sound">Sound</h2>
        <Tick label="Speak every value" on={voice.speak} onChange={(speak) => session.changeSettings({ voice: { speak } })} />
        <Tick
          label="Tones"
          note="When the hold begins and ends, and for whatever is noted or refused."
          on={sound}
          onChange={(on) => session.changeSettings({ sound: on })}
        />
      </section>
      <Listening />
    </>
  );
}
