// What each picture of a check is: focused in live view, or by autofocus after focus was thrown off to near or to far. The order that is said
// beforehand gives it; where the person says otherwise, the pictures after it go on from there.
import type { CheckShot } from '../checkEntered.ts';

export type CheckPart = 'live view' | CheckShot['thrown'] | 'left out';
export const CHECK_PARTS: readonly CheckPart[] = ['live view', 'near', 'far', 'left out'];

/** `order`: ids as they were taken. `told`: what the person said of some of them. One left out keeps its turn. */
export function checkParts(order: readonly string[], told: ReadonlyMap<string, CheckPart>): ReadonlyMap<string, CheckPart> {
  const parts = new Map<string, CheckPart>();
  let due: 'live view' | CheckShot['thrown'] = 'live view';
  for (const id of order) {
    const part: CheckPart = told.get(id) ?? due;
    parts.set(id, part);
    const taken: 'live view' | CheckShot['thrown'] = part === 'left out' ? due : part;
    // A reference in between does not change whose turn it is.
    if (taken === due || taken !== 'live view') due = taken === 'near' ? 'far' : 'near';
  }
  return parts;
}
