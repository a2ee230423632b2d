// Ids and seeds: the only place where chance enters.
export const newId = (): string => crypto.randomUUID();

/** A seed for the practice camera. */
export const newSeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
