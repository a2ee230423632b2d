// How the panel looks: its theme, and whether a sweep is shown to be read from the tripod.
import { Pick } from '../parts/pick.tsx';
import { Tick } from '../parts/tick.tsx';
import type { Theme } from '../../settings.ts';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';

export function Looks() {
  const session = useSession();
  const say = words('settings').look;
  const { theme, far } = session.settings.value.look;
  return (
    <section class="card" aria-labelledby="look">
      <h2 id="look">{say.title}</h2>
      <Pick
        legend={say.theme}
        options={THEMES.map((value) => ({ value, ...say.themes[value] }))}
        chosen={theme}
        onChoose={(chosen) => session.changeSettings({ look: { theme: chosen } })}
      />
      <Tick {...say.far} on={far} onChange={(on) => session.changeSettings({ look: { far: on } })} />
    </section>
  );
}

const THEMES: readonly Theme[] = ['system', 'light', 'dark', 'dim', 'red'];
