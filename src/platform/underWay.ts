// Whether a sweep is under way, asked before anything else of the panel is there. The polyfill would have to be waited for,
// so this asks under either name that a browser has for its API.
import type { KEY } from '../logbook/keys.ts';

interface Api {
  readonly storage: { readonly local: { get(key: string): Promise<Record<string, unknown>> } };
}

/** Its name in the store, without the others: this runs before the first frame. */
const LIVE = 'live' satisfies (typeof KEY)['live'];

const names = globalThis as unknown as { readonly browser?: Api; readonly chrome: Api };

/** Rejects where the store cannot be read. */
export async function sweepUnderWay(): Promise<boolean> {
  return LIVE in (await (names.browser ?? names.chrome).storage.local.get(LIVE));
}
