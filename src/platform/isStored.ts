// Whether the store holds a key, asked before anything else of the panel is there. The polyfill would have to be waited for,
// so this asks under either name that a browser has for its API.

interface Api {
  readonly storage: { readonly local: { get(key: string): Promise<Record<string, unknown>> } };
}

const names = globalThis as unknown as { readonly browser?: Api; readonly chrome: Api };

/** Rejects where the store cannot be read. */
export const isStored = async (key: string): Promise<boolean> => key in (await (names.browser ?? names.chrome).storage.local.get(key));
