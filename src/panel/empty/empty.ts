// What an empty screen shows, read when there is one.
import { late } from '../parts/late.tsx';

export const Empty = late(async () => (await import('./emptyPlace.tsx')).EmptyPlace, 'empty');
