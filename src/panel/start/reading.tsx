// How much of a large logbook has been read: until it has, Start cannot know which lens was the last.
import { words } from '../../words/catalogue.ts';
import { HowFar } from '../parts/howFar.tsx';
import { useSession } from '../useSession.ts';

export function Reading() {
  const share = useSession().reading.value;
  return share === null ? null : <HowFar said={words('session').stored.reading(share)} share={share} />;
}
