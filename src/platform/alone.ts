// One window at a time takes in a whole logbook; another that opens meanwhile waits until it is done.
const LOCK = 'sweepbook bringing';

export type Alone = <Value>(work: () => Promise<Value>) => Promise<Value>;

export const alone: Alone = (work) => navigator.locks.request(LOCK, work);
