// When a measurement is due again, whether a backup is reminded of, and whether last values travel to the person's other computers.
import { Choose } from '../parts/choose.tsx';
import { ScreenRoom } from '../parts/room.tsx';
import { Tick } from '../parts/tick.tsx';
import { words } from '../../words/catalogue.ts';
import type { SettingsWords } from '../../words/settingsWords.ts';
import { useSession } from '../useSession.ts';
import { Setting } from './setting.tsx';

export function LogbookRoom() {
  const session = useSession();
  const { again, backup, computers, pages, states } = words('settings');
  const { days, sync, remind } = session.settings.value.logbook;
  const age = AGES.find((one) => one.days === days);
  return (
    <ScreenRoom name="settings" title={pages.logbook} state={states.logbook(age ? age.label(again) : null, sync !== null)}>
      <Setting is="due again">
        <h3>{again.title}</h3>
        <Choose
          label={again.after}
          options={AGES.map((one) => ({ value: String(one.days), label: one.label(again) }))}
          chosen={String(days)}
          onChoose={(chosen) => session.changeSettings({ logbook: { days: Number(chosen) } })}
        />
      </Setting>
      <Setting is="backup">
        <h3>{backup.title}</h3>
        <Tick {...backup.remind} on={remind} onChange={(on) => session.changeSettings({ logbook: { remind: on } })} />
      </Setting>
      <Setting is="computers">
        <h3>{computers.title}</h3>
        <Tick {...computers.carry} on={sync !== null} onChange={(on) => session.syncValues(on)} />
      </Setting>
    </ScreenRoom>
  );
}

const AGES: readonly { readonly days: number; readonly label: (say: SettingsWords['again']) => string }[] = [
  { days: 90, label: ({ months }) => months(3) },
  { days: 180, label: ({ months }) => months(6) },
  { days: 365, label: ({ years }) => years(1) },
  { days: 730, label: ({ years }) => years(2) },
];
