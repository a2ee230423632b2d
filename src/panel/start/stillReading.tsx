// How much of a large logbook has been read: until it has, Start cannot know which lens was the last.
import { words } from '../../words/catalogue.ts';
import { LongWork } from '../parts/longWork.tsx';
import { useSession } from '../useSession.ts';

export function StillReading() {
  const share = useSession().reading.value;
  return share === null ? null : <LongWork said={words('session').stored.reading(share)} share={share} />;
}
