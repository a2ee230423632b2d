// The microphone for as long as listening goes on: asked for again whenever permission or devices change, or when the other
// program may have let go of it; and watched for being switched off where it stands.
import { microphoneChanged, microphonePermission, openMicrophone, type Treatment } from './microphone.ts';
import type { EarOwner } from './owner.ts';
import { watchForSilence } from './silence.ts';

/** Nothing tells that another program has let go of it. */
const TRIED_AGAIN_AFTER = 5000;

/** Null once listening is over. */
export async function lineIn(owner: EarOwner, treatment: Treatment, stop: AbortSignal): Promise<MediaStreamTrack | null> {
  while (!stop.aborted) {
    if ((await microphonePermission())?.state === 'prompt') owner.onState('asking');
    const opened = await openMicrophone(treatment);
    if (opened.ok && stop.aborted) opened.value.stop();
    if (stop.aborted) return null;
    if (opened.ok) {
      watch(opened.value, owner, stop);
      return opened.value;
    }
    const { fault: why } = opened;
    owner.onState(why === 'not asked' || why === 'blocked' ? 'needs permission' : 'waiting');
    owner.onDeaf(why);
    await microphoneChanged(why === 'in use' ? AbortSignal.any([stop, AbortSignal.timeout(TRIED_AGAIN_AFTER)]) : stop);
  }
  return null;
}

const silent = new WeakSet<MediaStreamTrack>();

/** What is wrong with a microphone that is open. */
export const faultOf = (track: MediaStreamTrack): 'muted' | 'silent' | null => (track.muted ? 'muted' : silent.has(track) ? 'silent' : null);

function watch(track: MediaStreamTrack, owner: EarOwner, stop: AbortSignal): void {
  const tell = (): void => owner.onDeaf(faultOf(track));
  for (const change of ['mute', 'unmute']) track.addEventListener(change, tell, { signal: stop });
  watchForSilence(
    track,
    (isSilent) => {
      if (isSilent) silent.add(track);
      else silent.delete(track);
      tell();
    },
    stop,
  );
  tell();
}
