// Where the centre lies, and between what: two of the facts of any result that knows it.
import { inTenths } from '../words/figures.ts';

interface Props {
  readonly centre: number;
  readonly interval: { readonly from: number; readonly to: number };
}

export function CentreFacts({ centre, interval }: Props) {
  return (
    <>
      <dt>Centre</dt>
      <dd>{inTenths(centre)}</dd>
      <dt>95 % interval</dt>
      <dd>
        {inTenths(interval.from)} to {inTenths(interval.to)}
      </dd>
    </>
  );
}
