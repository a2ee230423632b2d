// The hearing check as it is seen: the meter with its advice, what was heard, and every word that can be taught.
import { WORDS } from '../../sweep/inputs.ts';
import { SPELLING_WORDS } from '../../voice/ownWords/spelledValue.ts';
import { TAUGHT } from '../../voice/vocabulary/en.ts';
import type { Check } from './check.ts';
import { TAKES_A_WORD } from './lesson.ts';

const TEACHABLE: readonly string[] = [...WORDS.map((word) => TAUGHT[word]), ...SPELLING_WORDS];

export function CheckView({ check }: { readonly check: Check }) {
  return (
    <>
      <h1>Hearing check</h1>
      <p>
        Sound is compared on this computer and never kept or sent. What is kept of a word you teach is its pattern, from which
        nothing can be played. It stays in this browser, and goes into a backup file when you write one.
      </p>
      <Room check={check} />
      <Words check={check} />
    </>
  );
}

function Room({ check }: { readonly check: Check }) {
  const level = check.level.value;
  return (
    <section aria-labelledby="room">
      <h2 id="room">The room</h2>
      {check.listens.value ? (
        <label>
          Level
          <meter min={-90} max={0} low={-60} high={-3} value={level} />
        </label>
      ) : (
        <button type="button" class="chief" onClick={() => void check.listen()}>
          Listen
        </button>
      )}
      <output>{check.state.value}</output>
      <output class="saying">{check.heard.value}</output>
    </section>
  );
}

function Words({ check }: { readonly check: Check }) {
  const takes = check.takes.value;
  const taught = new Set(takes.map(({ word }) => word));
  const learned = takes.filter((take) => take.learned);
  const next = TEACHABLE.find((word) => !taught.has(word));
  const stateOf = (word: string): string => {
    if (!taught.has(word)) return 'not taught';
    const more = learned.filter((take) => take.word === word).length;
    return more > 0 ? `taught, and ${more} learned` : 'taught';
  };
  return (
    <section aria-labelledby="words">
      <h2 id="words">Your words</h2>
      <p>
        Each word is said {TAKES_A_WORD} times. Teach at least those you use; what is not taught is told by keys, the pedal or
        the pointer. A value is told as “set”, its sign and its digits. The panel learns from
        words that were right where its settings say so, under Voice.
      </p>
      <Teaching check={check} />
      {check.listens.value && !check.teaching.value && next !== undefined && (
        <button type="button" class="chief" onClick={() => check.teach(next)}>
          Teach “{next}”
        </button>
      )}
      <ul class="taught">
        {TEACHABLE.map((word) => (
          <li key={word}>
            <span>
              {word} <span class="muted small">{stateOf(word)}</span>
            </span>
            <button type="button" disabled={!check.listens.value} aria-label={taught.has(word) ? `Teach ${word} again` : `Teach ${word}`} onClick={() => check.teach(word)}>
              {taught.has(word) ? 'Again' : 'Teach'}
            </button>
          </li>
        ))}
      </ul>
      {learned.length > 0 && (
        <button type="button" onClick={() => void check.forgetLearned()}>
          Forget what was learned, keep what I taught
        </button>
      )}
      {taught.size > 0 && (
        <button type="button" onClick={() => void check.erase()}>
          Erase everything I taught
        </button>
      )}
    </section>
  );
}

function Teaching({ check }: { readonly check: Check }) {
  const teaching = check.teaching.value;
  if (!teaching) return null;
  return (
    <div>
      <p class="saying">
        Say “{teaching.word}” <span class="muted small">{teaching.done} of {TAKES_A_WORD}</span>
      </p>
      <output>{teaching.said}</output>
      <button type="button" onClick={check.stopTeaching}>
        Stop
      </button>
    </div>
  );
}
