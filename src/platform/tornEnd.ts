// What a power cut in the middle of a write does to storage.local in Chromium, and what is done about it: the browser's log ends torn, goes on
// right behind that, and at the start after next everything that lies in the same block of 32 KiB is thrown away, however often it was
// acknowledged. So the first thing written in a run of the browser is filler that reaches past the block, and is removed at once.

export const FILLER = 'filler-after-a-cut';
/** Longer than a block of the log (LevelDB's log format: 32,768 bytes). */
const LENGTH = 33_000;
/** Where it stands for as long as the browser runs that this was done. */
const DONE = 'filled';

/** The parts of the browser's storage areas that this needs. */
interface Area {
  get(key: string): Promise<Record<string, unknown>>;
  set(entries: Record<string, unknown>): Promise<void>;
  remove(key: string): Promise<void>;
}

/** Once in a run of the browser; `run`: the area that is gone with it, where there is one. Never fails: what is written next will say why. */
export async function pastTornEnd(local: Area, run: Area | undefined): Promise<void> {
  try {
    if ((await run?.get(DONE))?.[DONE] === true) return;
    await local.set({ [FILLER]: ' '.repeat(LENGTH) });
    await local.remove(FILLER);
    await run?.set({ [DONE]: true });
  } catch {
    // No room, or no answer: there is nothing to tell of filler.
  }
}
