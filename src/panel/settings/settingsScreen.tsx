// The settings: how the person wants to work, how the panel speaks, sounds and listens, and how the logbook keeps. Each takes effect at
// once; each page of them is a room to open, and a search leads into it.
import { ToAbout } from '../about/toAbout.tsx';
import { Heading } from '../parts/heading.tsx';
import { words } from '../../words/catalogue.ts';
import { useSurroundings } from '../useSession.ts';
import { FindSetting } from './findSetting.tsx';
import { ListeningRoom } from './listening.tsx';
import { LanguageRoom } from './languageRoom.tsx';
import { LogbookRoom } from './logbookRoom.tsx';
import { LooksRoom } from './looksRoom.tsx';
import { SoundRoom } from './soundRoom.tsx';
import { WorkingRoom } from './workingRoom.tsx';

export function SettingsScreen() {
  const { way } = useSurroundings();
  return (
    <>
      <Heading onBack={() => way.back()}>{words('settings').title}</Heading>
      <FindSetting />
      <div class="rooms">
        <WorkingRoom />
        <SoundRoom />
        <ListeningRoom />
        <LooksRoom />
        <LanguageRoom />
        <LogbookRoom />
      </div>
      <ToAbout />
    </>
  );
}
