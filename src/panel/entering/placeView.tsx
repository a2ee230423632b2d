// What to enter in one place of the body's memory, and how that stands in every band: in the panel and on paper.
import { Fragment } from 'preact';
import type { MemoryPlace } from '../../logbook/entering/advice.ts';
import type { Fit } from '../../logbook/entering/band.ts';
import type { Choice } from '../../logbook/entering/oneValue.ts';
import { throughConverter } from '../../logbook/entering/converter.ts';
import type { Lens } from '../../kit/kit.ts';
import { widestAt } from '../../kit/lens.ts';
import { writeSteps } from '../../sweep/scale.ts';
import type { Steps } from '../../units.ts';
import { words } from '../../words/catalogue.ts';
import { run } from '../../words/run.ts';
import { BandChart } from './bandChart.tsx';

interface Props {
  readonly place: MemoryPlace;
  readonly lens: Lens;
}

export function PlaceView({ place, lens }: Props) {
  const say = words('entering');
  const { one, two, missingEnd, uncounted, shown, byPictures } = place;
  return (
    <>
      {place.converter && <p class="muted small">{run(say.converter(fNumberOf(lens, place.converter.factor)))}</p>}
      <Values place={place} />
      {!one && !byPictures && <p>{say.unknown}</p>}
      <Shown shown={shown} />
      {missingEnd !== null && <p class="notice small">{say.missingEnd(missingEnd)}</p>}
      {!two && one && one.trade.length > 1 && <Trade options={one.trade} />}
      {uncounted.length > 0 && <p class="muted small">{say.uncounted(uncounted)}</p>}
    </>
  );
}

/** How the value stands in every band that was measured there. */
export function PlaceBands({ place }: Pick<Props, 'place'>) {
  const say = words('entering');
  const { one, two, evidence } = place;
  return (
    <>
      <BandChart place={place} />
      {evidence.length > 0 && (
        <table>
          <thead>
            <tr>
              <th scope="col">{say.table.at}</th>
              <th scope="col">{say.table.off}</th>
              <th scope="col">{say.table.share}</th>
            </tr>
          </thead>
          <tbody>{two ? [...two.wide.fits, ...two.tele.fits].map(rowOf) : one?.fits.map(rowOf)}</tbody>
        </table>
      )}
      {two?.middles.map((middle) => (
        <p key={middle.band.id} class="small">
          {run(say.middle(middle))}
        </p>
      ))}
    </>
  );
}

function Values({ place: { one, two, evidence, byPictures } }: { readonly place: MemoryPlace }) {
  const say = words('entering');
  if (two) {
    const end = ({ value, fits: [fit] }: Choice, named: (focalLength: number) => string) => (
      <>
        {fit && named(fit.band.focalLength)} <b>{writeSteps(value)}</b>
      </>
    );
    return (
      <p class="enter">
        {end(two.wide, say.wide)} {end(two.tele, say.tele)}
      </p>
    );
  }
  if (!one) return byPictures && <Value value={byPictures.value} />;
  const outside = one.fits.filter(({ inside }) => !inside).length;
  return (
    <>
      <Value value={one.value} />
      <p>{say.serves(outside, evidence.length, one.trade.length < 2)}</p>
    </>
  );
}

const Value = ({ value }: { readonly value: Steps }) => (
  <p class="enter">
    {words('entering').enter} <b>{writeSteps(value)}</b>
  </p>
);

/** A check that found a shift stands out: the value may have to be another one. */
function Shown({ shown }: Pick<MemoryPlace, 'shown'>) {
  const say = words('entering').shown;
  if (shown.length === 0) return null;
  return (
    <section class="small" aria-label={say.title}>
      {shown.map((there) => (
        <Fragment key={there.subject.situation}>
          {there.bracket && <p class={there.bracket.is === 'differ' ? 'fault' : ''}>{run(say.bracket(there))}</p>}
          {there.check && <p class={there.check.found === 'shifted' ? 'fault' : ''}>{say.check(there)}</p>}
        </Fragment>
      ))}
    </section>
  );
}

const rowOf = (fit: Fit) => {
  const say = words('entering');
  return (
    <tr key={fit.band.id}>
      <th scope="row">{say.at(fit.band)}</th>
      <td>{say.off(fit)}</td>
      <td>{say.share(fit)}</td>
    </tr>
  );
};

function Trade({ options }: { readonly options: readonly Choice[] }) {
  const { title, option } = words('entering').trade;
  return (
    <section class="notice">
      <div>
        <h3>{title}</h3>
        <ul>
          {options.map((one) => (
            <li key={one.value}>{run(option(one))}</li>
          ))}
        </ul>
      </div>
    </section>
  );
}

/** Of the lens with the converter behind it; null where that of the lens alone is not known. */
function fNumberOf(lens: Lens, factor: number): number | null {
  const widest = lens.focal && widestAt(lens, lens.focal.to);
  return widest ? throughConverter(factor).fNumber(widest) : null;
}
