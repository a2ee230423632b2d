// Where the voice sheet stands, out of what the person said and what the browser and the taught words say to it. Nothing is
// on before the person's yes and the browser's.
import type { RecognisedBy } from '../../voice/deaf.ts';
import type { Settings } from '../../settings.ts';

export type Stage =
  /** `isDownloadable`: the browser could hear on this computer, too, after a download. */
  | { readonly at: 'offered'; readonly by: RecognisedBy; readonly isDownloadable: boolean }
  | { readonly at: 'asking' }
  | { readonly at: 'refused' }
  /** So many of the first words are taught. */
  | { readonly at: 'teaching'; readonly taught: number }
  /** Everything that was wished for is there: it may be switched on. */
  | { readonly at: 'complete'; readonly by: RecognisedBy }
  | { readonly at: 'on' };

interface Known {
  readonly voice: Pick<Settings['voice'], 'listen' | 'wish'>;
  /** What would be proposed here. */
  readonly proposed: RecognisedBy;
  readonly isDownloadable: boolean;
  readonly allowed: PermissionState | 'unknown';
  /** How many of the first words are taught, and how many there are. */
  readonly taught: number;
  readonly wanted: number;
}

export function stageOf({ voice: { listen, wish }, proposed, isDownloadable, allowed, taught, wanted }: Known): Stage {
  if (listen !== 'off') return { at: 'on' };
  if (wish === 'none') return { at: 'offered', by: proposed, isDownloadable };
  if (allowed === 'denied') return { at: 'refused' };
  if (allowed !== 'granted') return { at: 'asking' };
  return wish === 'own' && taught < wanted ? { at: 'teaching', taught } : { at: 'complete', by: wish };
}
