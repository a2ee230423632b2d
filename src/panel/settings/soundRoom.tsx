// How the panel speaks and sounds, and trying that out.
import { ScreenRoom } from '../parts/room.tsx';
import { Tick } from '../parts/tick.tsx';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';
import { SoundCheck } from '../voice/soundCheck.tsx';
import { Setting } from './setting.tsx';
import { Speaking } from './speaking.tsx';

export function SoundRoom() {
  const session = useSession();
  const { sound: say, pages, states } = words('settings');
  const { voice, sound } = session.settings.value;
  return (
    <ScreenRoom name="settings" title={pages.sound} state={states.sound(voice.speak, sound)}>
      <Setting is="speech">
        <Tick label={say.speak} on={voice.speak} onChange={(speak) => session.changeSettings({ voice: { speak } })} />
        {voice.speak && <Speaking />}
      </Setting>
      <Setting is="tones">
        <Tick {...say.tones} on={sound} onChange={(on) => session.changeSettings({ sound: on })} />
      </Setting>
      <Setting is="sound check">
        <SoundCheck />
      </Setting>
    </ScreenRoom>
  );
}
