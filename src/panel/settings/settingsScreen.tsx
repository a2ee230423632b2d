// The settings: how the person wants to work, and how the panel speaks, sounds and listens. Each takes effect at once.
import { Choose } from '../parts/choose.tsx';
import { Heading } from '../parts/heading.tsx';
import { Tick } from '../parts/tick.tsx';
import { MannerPick } from '../start/mannerPick.tsx';
import { useSurroundings } from '../useSession.ts';
import { SoundCheck } from '../voice/soundCheck.tsx';
import { Listening } from './listening.tsx';
import { PacePick } from './pacePick.tsx';
import { Speaking } from './speaking.tsx';
import { Slide } from './slide.tsx';

export function SettingsScreen() {
  const { session, way } = useSurroundings();
  const { manner, voice, sound, logbook } = session.settings.value;
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
        {voice.speak && <Speaking />}
        <Tick
          label="Tones"
          note="When the hold begins and ends, and for whatever is noted or refused."
          on={sound}
          onChange={(on) => session.changeSettings({ sound: on })}
        />
        <SoundCheck />
      </section>
      <section class="card" aria-labelledby="again">
        <h2 id="again">Due again</h2>
        <Choose
          label="A measurement is old after"
          options={AGES}
          chosen={String(logbook.days)}
          onChoose={(days) => session.changeSettings({ logbook: { days: Number(days) } })}
        />
      </section>
      <section class="card" aria-labelledby="computers">
        <h2 id="computers">Your other computers</h2>
        <Tick
          label="Carry the last values between them"
          note={SYNC_MEANS}
          on={logbook.sync !== null}
          onChange={(on) => session.syncValues(on)}
        />
      </section>
      <Listening />
    </>
  );
}

const SYNC_MEANS =
  'Through your browser account: the last value of each situation, its date, the names of body and lens, focal length and ' +
  'distance leave this computer. Sweeps, notes and serial numbers stay here. Switch it on at each computer; switched off, ' +
  'this one’s values are taken out of the account again.';

const AGES = [
  { value: '90', label: '3 months' },
  { value: '180', label: '6 months' },
  { value: '365', label: 'a year' },
  { value: '730', label: 'two years' },
];
