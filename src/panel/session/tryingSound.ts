// The sound check: the tones of a hold and a spoken value, once, as they are set. Whether it was heard only the person knows;
// what the computer itself knows is told.
import type { Settings } from '../../settings.ts';
import { steps, seconds } from '../../units.ts';
import { aloud } from '../../words/catalogue.ts';
import type { Ports } from './ports.ts';

/** What came of it: `stands still` where the computer gives no sound out at all. */
export interface SoundHeard {
  readonly tones: 'sounded' | 'stands still' | 'off';
  readonly speech: 'said' | 'no voice' | 'off';
}

/** Between two tones, so that they are told apart. */
const APART = 700;
const TRIED = steps(6);

export async function trySound(
  { tones, speech, route: openRoute }: Pick<Ports, 'tones' | 'speech' | 'route'>,
  settings: Settings,
  deafen: () => () => void,
): Promise<SoundHeard> {
  const { sound, voice, loudness } = settings;
  const hearAgain = deafen();
  try {
    const toned = sound ? await both() : 'off';
    return { tones: toned, speech: voice.speak ? await speech.say(aloud('spoken').correction(TRIED), { ...voice, loudness }) : 'off' };
  } finally {
    hearAgain();
  }

  async function both(): Promise<'sounded' | 'stands still'> {
    const route = await openRoute();
    route.keep(true);
    for (const tone of ['begin', 'end'] as const) {
      tones.play(tone, seconds(0), loudness);
      await new Promise((apart) => setTimeout(apart, APART));
    }
    const runs = route.runs();
    route.keep(false);
    return runs ? 'sounded' : 'stands still';
  }
}
