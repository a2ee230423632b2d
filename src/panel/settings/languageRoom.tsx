// The language of the screens, the one in which the panel speaks and is spoken to, and what distances are told in.
import { countryAmong, isDistances } from '../../country.ts';
import { isLanguage, languageAmong, LANGUAGES } from '../../language.ts';
import { likedLanguages } from '../../platform/language.ts';
import { Choose } from '../parts/choose.tsx';
import { ScreenRoom } from '../parts/room.tsx';
import { words } from '../../words/catalogue.ts';
import { inUse } from '../../words/inUse.ts';
import { ownName } from '../../words/named.ts';
import { useSession } from '../useSession.ts';
import { Setting } from './setting.tsx';

const UNITS = ['m', 'ft'] as const;

export function LanguageRoom() {
  const session = useSession();
  const { language: say, pages, states } = words('settings');
  const { screens, voice, distances } = session.settings.value.language;
  const used = inUse.value;
  const all = LANGUAGES.map((value) => ({ value, label: ownName(value) }));
  return (
    <ScreenRoom name="settings" title={pages.language} state={states.language(ownName(used.screens), used.voice === used.screens ? null : ownName(used.voice))}>
      <Setting is="language">
        <Choose
          label={say.screens}
          options={[{ value: 'browser', label: say.browser(ownName(languageAmong(likedLanguages()))) }, ...all]}
          chosen={screens}
          onChoose={(chosen) => session.changeSettings({ language: { screens: isLanguage(chosen) ? chosen : 'browser' } })}
        />
      </Setting>
      <Setting is="voice language">
        <Choose
          label={say.voice}
          options={[{ value: 'screens', label: say.asScreens }, ...all]}
          chosen={voice}
          onChoose={(chosen) => session.changeSettings({ language: { voice: isLanguage(chosen) ? chosen : 'screens' } })}
        />
        <p class="muted small">{say.note}</p>
      </Setting>
      <Setting is="distances">
        <Choose
          label={say.distances}
          options={[
            { value: 'country', label: say.asCountry(countryAmong(likedLanguages()).unit) },
            ...UNITS.map((value) => ({ value, label: say.units[value] })),
          ]}
          chosen={distances}
          onChoose={(chosen) => session.changeSettings({ language: { distances: isDistances(chosen) ? chosen : 'country' } })}
        />
      </Setting>
    </ScreenRoom>
  );
}
