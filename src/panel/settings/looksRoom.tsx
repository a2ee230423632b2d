// How the panel looks: its theme, and whether a sweep is shown to be read from the tripod.
import { Pick } from '../parts/pick.tsx';
import { ScreenRoom } from '../parts/room.tsx';
import { Tick } from '../parts/tick.tsx';
import type { Theme } from '../../settings.ts';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';
import { Setting } from './setting.tsx';

export function LooksRoom() {
  const session = useSession();
  const { look: say, pages, states } = words('settings');
  const { theme, far } = session.settings.value.look;
  return (
    <ScreenRoom name="settings" title={pages.look} state={states.look(theme, far)}>
      <Setting is="theme">
        <Pick
          legend={say.theme}
          options={THEMES.map((value) => ({ value, ...say.themes[value] }))}
          chosen={theme}
          onChoose={(chosen) => session.changeSettings({ look: { theme: chosen } })}
        />
      </Setting>
      <Setting is="far view">
        <Tick {...say.far} on={far} onChange={(on) => session.changeSettings({ look: { far: on } })} />
      </Setting>
    </ScreenRoom>
  );
}

const THEMES: readonly Theme[] = ['system', 'light', 'dark', 'dim', 'red'];
