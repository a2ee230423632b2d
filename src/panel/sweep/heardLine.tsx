// The last thing the panel took in, what became of it, and the way to take it back.
import type { Word } from '../../sweep/inputs.ts';
import { useSession } from '../useSession.ts';
import { WordButton } from './wordButton.tsx';

interface Props {
  readonly undoable: boolean;
  readonly tell: (word: Word) => void;
}

export function HeardLine({ undoable, tell }: Props) {
  const session = useSession();
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
