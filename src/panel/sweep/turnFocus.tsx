// In place of a value: the focus is to be set aside in live view, so that the whole band falls inside the scale.
import type { TurnWay } from '../../sweep/transfer/turning.ts';
import { words } from '../../words/catalogue.ts';

interface Props {
  readonly way: TurnWay;
  readonly practice: boolean;
}

export function TurnFocus({ way, practice }: Props) {
  const say = words('sweep').turnFocus;
  return (
    <section class="check" tabIndex={0} aria-label={say.label}>
      <h2>{say.title[practice ? 'first' : way]}</h2>
      {practice ? (
        <p>{say.practice}</p>
      ) : (
        <>
          <p>
            <b>{say.what[way]}</b>
          </p>
          <p>{say.leaveIt}</p>
        </>
      )}
    </section>
  );
}
