// The line above the switch, always as high: the last thing the panel took in, what became of it, and
// the way to take it back. What must not be missed stands in its place: that the keys go to the page, or a question.
import type { Word } from '../../sweep/inputs.ts';
import { isStanding } from '../../sweep/understood.ts';
import { askedInWords } from '../session/asking.ts';
import type { KeysGo } from '../keys/keysGo.ts';
import { KeysNotice } from '../keys/keysNotice.tsx';
import { words } from '../../words/catalogue.ts';
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
  const say = words('sweep').heard;
  return (
    <fieldset class="heard" aria-label={say.label}>
      <div>
        <p>
          {heard ? (
            <>
              <b>{heard.words}</b> {'\u2192'} {heard.became}
            </>
          ) : (
            <span class="muted">{say.none}</span>
          )}
        </p>
      </div>
      {undoable && <WordButton word="undo" tell={tell} />}
    </fieldset>
  );
}
