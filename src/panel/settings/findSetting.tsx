// The search of the settings: what is found is a button that leads to where the setting stands.
import { useEffect, useState } from 'preact/hooks';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';
import { namedSettings, type NamedSetting } from './named.ts';
import { findSettings } from './search.ts';
import { leadTo } from './setting.tsx';

export function FindSetting() {
  const session = useSession();
  const { find: say, pages } = words('settings');
  const [typed, setTyped] = useState('');
  const [chosen, setChosen] = useState<NamedSetting | null>(null);
  // Once what was found is gone from above it, or the page would move under it.
  useEffect(() => (chosen === null ? undefined : leadTo(chosen.is)), [chosen]);
  const found = findSettings(typed, namedSettings(session.settings.value));
  const asked = typed.trim() !== '';
  return (
    <search class="stack">
      <input
        type="search"
        aria-label={say.label}
        placeholder={say.label}
        autocomplete="off"
        value={typed}
        onInput={(event) => setTyped(event.currentTarget.value)}
      />
      <output class={asked ? 'small' : 'unseen'}>{asked && say.found(found.length)}</output>
      {found.length > 0 && (
        <ul class="plain settings-found">
          {found.map((one) => (
            <li key={one.is}>
              <button
                type="button"
                onClick={() => {
                  setTyped('');
                  setChosen(one);
                }}
              >
                {one.label} <span class="muted small">{pages[one.page]}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </search>
  );
}
