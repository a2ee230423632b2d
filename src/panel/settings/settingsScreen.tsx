// The settings: how the person wants to work, and how the panel speaks, sounds and listens. Each takes effect at once.
import { Choose } from '../parts/choose.tsx';
import { Heading } from '../parts/heading.tsx';
import { Tick } from '../parts/tick.tsx';
import { MannerPick } from '../start/mannerPick.tsx';
import { words } from '../../words/catalogue.ts';
import type { SettingsWords } from '../../words/settingsWords.ts';
import { useSurroundings } from '../useSession.ts';
import { SoundCheck } from '../voice/soundCheck.tsx';
import { Listening } from './listening.tsx';
import { Looks } from './looks.tsx';
import { PacePick } from './pacePick.tsx';
import { Speaking } from './speaking.tsx';
import { Slide } from './slide.tsx';

export function SettingsScreen() {
  const { session, way } = useSurroundings();
  const say = words('settings');
  const { manner, voice, sound, logbook } = session.settings.value;
  return (
    <>
      <Heading onBack={() => way.back()}>{say.title}</Heading>
      <section class="card" aria-labelledby="working">
        <h2 id="working">{say.working.title}</h2>
        <MannerPick />
        <Slide
          label={say.working.holdTime(manner.holdTime)}
          says={say.working.seconds(manner.holdTime)}
          note={say.working.holdTimeNote}
          from={3}
          to={15}
          value={manner.holdTime}
          onSlide={(holdTime) => session.changeSettings({ manner: { holdTime } })}
        />
        <PacePick />
      </section>
      <section class="card" aria-labelledby="sound">
        <h2 id="sound">{say.sound.title}</h2>
        <Tick label={say.sound.speak} on={voice.speak} onChange={(speak) => session.changeSettings({ voice: { speak } })} />
        {voice.speak && <Speaking />}
        <Tick {...say.sound.tones} on={sound} onChange={(on) => session.changeSettings({ sound: on })} />
        <SoundCheck />
      </section>
      <Looks />
      <section class="card" aria-labelledby="again">
        <h2 id="again">{say.again.title}</h2>
        <Choose
          label={say.again.after}
          options={AGES.map(({ days, label }) => ({ value: String(days), label: label(say.again) }))}
          chosen={String(logbook.days)}
          onChoose={(days) => session.changeSettings({ logbook: { days: Number(days) } })}
        />
      </section>
      <section class="card" aria-labelledby="computers">
        <h2 id="computers">{say.computers.title}</h2>
        <Tick {...say.computers.carry} on={logbook.sync !== null} onChange={(on) => session.syncValues(on)} />
      </section>
      <Listening />
    </>
  );
}

const AGES: readonly { readonly days: number; readonly label: (say: SettingsWords['again']) => string }[] = [
  { days: 90, label: ({ months }) => months(3) },
  { days: 180, label: ({ months }) => months(6) },
  { days: 365, label: ({ years }) => years(1) },
  { days: 730, label: ({ years }) => years(2) },
];
