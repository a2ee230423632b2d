// A large logbook was being brought in when the browser ended: what was there before is put back from the copy that was taken
// first, so that all of it is there or nothing of it.
import { isSame } from '../../logbook/canonical.ts';
import { KEY, PREFIX } from '../../logbook/keys.ts';
import type { Stored } from '../../logbook/stored.ts';
import { moment } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import type { CopyWorld } from './copies.ts';
import { keepInParts } from './inParts.ts';

export async function putBack({ snapshots, keeper, troubles }: CopyWorld, stored: Stored): Promise<Stored> {
  const copied = moment(Number(stored[KEY.bringing]));
  const copy = await (await snapshots()).read(copied);
  // Without the copy, what has come in stays: each item of it is whole.
  const changes = copy.ok ? changesBack(stored, copy.value.stored) : {};
  await keepInParts(keeper, changes, copied);
  await keeper.keep({ [KEY.bringing]: undefined });
  troubles.add('bringing', copy.ok ? words('session').bringing.brokenOff : words('session').copies.fault[copy.fault]);
  const back = { ...stored, ...changes, [KEY.bringing]: undefined };
  return Object.fromEntries(Object.entries(back).filter(([, value]) => value !== undefined));
}

/** Of what is brought in: anything else may have changed since. */
function changesBack(now: Stored, before: Stored): Stored {
  const isBrought = (key: string): boolean => key === KEY.kit || key === KEY.replaced || Object.values(PREFIX).some((prefix) => key.startsWith(prefix));
  const keys = new Set([...Object.keys(now), ...Object.keys(before)].filter(isBrought));
  return Object.fromEntries([...keys].filter((key) => !isSame(now[key], before[key])).map((key) => [key, before[key]]));
}
