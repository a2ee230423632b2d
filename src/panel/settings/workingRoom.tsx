// How the person works: how carefully and in which order, how long a hold lasts, and who begins it.
import { CarePick, OrderPick } from '../start/mannerPick.tsx';
import { ScreenRoom } from '../parts/room.tsx';
import { words } from '../../words/catalogue.ts';
import { useSession } from '../useSession.ts';
import { PacePick } from './pacePick.tsx';
import { Setting } from './setting.tsx';
import { Shortcut } from './shortcut.tsx';
import { Slide } from './slide.tsx';

export function WorkingRoom() {
  const session = useSession();
  const { working: say, pages, states } = words('settings');
  const { manner } = session.settings.value;
  return (
    <ScreenRoom name="settings" title={pages.working} state={states.working(words('manner').cares[manner.care].label, manner)}>
      <Setting is="care">
        <CarePick />
      </Setting>
      <Setting is="order">
        <OrderPick />
      </Setting>
      <Setting is="hold time">
        <Slide
          label={say.holdTime(manner.holdTime)}
          says={say.seconds(manner.holdTime)}
          note={say.holdTimeNote}
          from={3}
          to={15}
          value={manner.holdTime}
          onSlide={(holdTime) => session.changeSettings({ manner: { holdTime } })}
        />
      </Setting>
      <Setting is="pace">
        <PacePick />
      </Setting>
      <Setting is="shortcut">
        <Shortcut />
      </Setting>
    </ScreenRoom>
  );
}
