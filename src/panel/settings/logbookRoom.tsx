// When a measurement is due again, whether a backup is reminded of, and whether last values travel to the person's other computers.
import { Choose } from '../parts/choose.tsx';
import { ScreenRoom } from '../parts/room.tsx';
import { Tick } from '../parts/tick.tsx';
import { words } from '../../words/catalogue.ts';
import type { Age } from '../../words/settingsWords.ts';
import { useSession } from '../useSession.ts';
import { Setting } from './setting.tsx';

export function LogbookRoom() {
  const session = useSession();
  const { again, backup, computers, pages, states } = words('settings');
  const { days, sync, remind } = session.settings.value.logbook;
  const old = AGES.find((one) => one.days === days);
  return (
    <ScreenRoom name="settings" title={pages.logbook} state={states.logbook(old?.age ?? null, sync !== null)}>
      <Setting is="due again">
        <h3>{again.title}</h3>
        <Choose
          label={again.after}
          options={AGES.map((one) => ({ value: String(one.days), label: again.age(one.age) }))}
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

const AGES: readonly { readonly days: number; readonly age: Age }[] = [
  { days: 90, age: { in: 'months', count: 3 } },
  { days: 180, age: { in: 'months', count: 6 } },
  { days: 365, age: { in: 'years', count: 1 } },
  { days: 730, age: { in: 'years', count: 2 } },
];
