// In place of a value: the focus is to be set aside in live view, so that the whole band falls inside the scale.
import type { TurnWay } from '../../sweep/transfer/turning.ts';

interface Props {
  readonly way: TurnWay;
  readonly practice: boolean;
}

export function TurnFocus({ way, practice }: Props) {
  return (
    <section class="check" tabIndex={0} aria-label="Turn the focus">
      <h2>{practice ? 'Set the focus aside' : TITLE[way]}</h2>
      {practice ? (
        <p>With a real lens you would turn the ring in live view, until just off sharp. The practice camera turns its own.</p>
      ) : (
        <>
          <p>
            <b>{WHAT[way]}</b>
          </p>
          <p>Then leave the ring alone until this sweep is over.</p>
        </>
      )}
    </section>
  );
}

const TITLE: Record<TurnWay, string> = {
  first: 'Set the focus aside',
  further: 'A little further',
  'other way': 'The other way',
  back: 'Too far',
};

const WHAT: Record<TurnWay, string> = {
  first: 'In live view turn the ring a little, until the target is just off sharp. Which way need not be known: the holds will tell.',
  further: 'It was the right way. Turn the ring a little further in live view.',
  'other way': 'The band lies further off than before. Turn the ring back past sharp, to just off sharp on the other side.',
  back: 'The band runs out on the other side. Turn the ring about halfway back to sharp.',
};
