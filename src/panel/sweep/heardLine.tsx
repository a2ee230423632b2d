// The line above the switch, always as high: the last thing the panel took in, what became of it, and
// the way to take it back. What must not be missed stands in its place: that the keys go to the page, or a question.
import type { Word } from '../../sweep/inputs.ts';
import { isStanding } from '../../sweep/understood.ts';
import { askedInWords } from '../session/asking.ts';
import type { KeysGo } from '../keys/keysGo.ts';
import { KeysNotice } from '../keys/keysNotice.tsx';
import { useSession } from '../useSession.ts';
import { WordButton } from './wordButton.tsx';

interface Props {
  readonly keysGo: KeysGo;
  readonly undoable: boolean;
  readonly tell: (word: Word) => void;
}

export function HeardLine({ keysGo, undoable, tell }: Props) {
  const session = useSession();
  const sweep = session.sweep.value;
  const asked = session.pressAsked.value;
  if (keysGo !== 'here') {
    return (
      <div class="heard">
        <KeysNotice go={keysGo} />
      </div>
    );
  }
  if (asked && sweep && isStanding(asked, sweep)) {
    return (
      <div class="heard">
        <p class="minded" role="alert" data-asked={asked.about}>
          {askedInWords(asked, sweep)}
        </p>
      </div>
    );
  }
  const heard = session.heard.value;
  return (
    <fieldset class="heard" aria-label="Last heard">
      <div>
        <p>
          {heard ? (
            <>
              <b>{heard.words}</b> {'\u2192'} {heard.became}
            </>
          ) : (
            <span class="muted">nothing told yet</span>
          )}
        </p>
      </div>
      {undoable && <WordButton word="undo" tell={tell} />}
    </fieldset>
  );
}
