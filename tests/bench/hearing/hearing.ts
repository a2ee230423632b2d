// Family `hearing`: the matcher on transcripts and own words on spoken digits, from a data folder that is not part of
// the project: heard-transcripts.json and fsdd/DIGIT_SPEAKER_TAKE.wav; and the matcher on the project's own held-out
// transcripts. What the folder lacks is reported as not measured.
import type { Family } from '../figure.ts';
import { onSpokenDigits } from './ownWords.ts';
import { onHeldOut, onTranscripts } from './transcripts.ts';

export const hearing: Family = {
  name: 'hearing',
  run: ({ data, tell }) => {
    const transcripts = data === null ? null : onTranscripts(data);
    if (transcripts === null) tell('not measured: transcripts (no heard-transcripts.json in the data folder; give one with --data)');
    const digits = data === null ? null : onSpokenDigits(data, tell);
    if (digits === null) tell('not measured: own words (no fsdd/ in the data folder; give one with --data)');
    return Promise.resolve([...(transcripts ?? []), ...onHeldOut(), ...(digits ?? [])]);
  },
};
