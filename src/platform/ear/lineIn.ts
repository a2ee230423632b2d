// The microphone for as long as listening goes on: asked for again whenever permission or devices change.
import { microphoneChanged, openMicrophone, type Treatment } from './microphone.ts';
import type { EarOwner } from './owner.ts';

/** Null once listening is over. */
export async function lineIn(owner: EarOwner, treatment: Treatment, stop: AbortSignal): Promise<MediaStreamTrack | null> {
  while (!stop.aborted) {
    const opened = await openMicrophone(treatment);
    if (opened.ok) {
      if (stop.aborted) opened.track.stop();
      else owner.onTrouble(null);
      return stop.aborted ? null : opened.track;
    }
    const forbidden = opened.why === 'permission';
    owner.onState(forbidden ? 'needs permission' : 'waiting');
    owner.onTrouble({ sentence: opened.sentence, page: forbidden ? 'microphone.html' : null });
    await microphoneChanged(stop);
  }
  return null;
}
