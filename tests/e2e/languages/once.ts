// A walk that several tests ask something of: it is taken when the first of them runs, and each reads its own part of what was found.
export function once<Found>(walk: () => Promise<Found>): () => Promise<Found> {
  let taken: Promise<Found> | null = null;
  return () => (taken ??= walk());
}
