// What to enter in one place of the body's memory, with how it stands in every band: in the panel and on paper.
import type { Place } from '../../logbook/entering/advice.ts';
import type { Fit } from '../../logbook/entering/band.ts';
import type { Choice } from '../../logbook/entering/oneValue.ts';
import { throughConverter } from '../../logbook/entering/converter.ts';
import type { Lens } from '../../kit/kit.ts';
import { widestAt } from '../../kit/lens.ts';
import { writeSteps } from '../../sweep/scale.ts';
import { millimetres } from '../../units.ts';
import { inTenths } from '../words/figures.ts';
import { inMetres, inMillimetres } from '../words/quantities.ts';
import { BandChart } from './bandChart.tsx';

interface Props {
  readonly place: Place;
  readonly lens: Lens;
}

export function PlaceView({ place, lens }: Props) {
  const { one, two, missingEnd, uncounted, evidence } = place;
  return (
    <>
      {place.converter && <p class="muted small">{throughIt(lens, place.converter.factor)}</p>}
      {one && <Values place={place} />}
      {!one && <p>No band is known here yet. Measure it, or write down both ends of a band by hand.</p>}
      {missingEnd !== null && (
        <p class="notice small">
          This body keeps a value for each end. Measure it at {inMillimetres(millimetres(missingEnd))} too; until then this is one value for all.
        </p>
      )}
      <BandChart place={place} />
      {evidence.length > 0 && (
        <table>
          <thead>
            <tr>
              <th scope="col">Measured at</th>
              <th scope="col">Off by</th>
              <th scope="col">Of half-band</th>
            </tr>
          </thead>
          <tbody>{two ? [...two.wide.fits, ...two.tele.fits].map(rowOf) : one?.fits.map(rowOf)}</tbody>
        </table>
      )}
      {two?.middles.map(({ band, linear, logarithmic }) => (
        <p key={band.id} class="small">
          {inMillimetres(band.focalLength)} at {inMetres(band.distance)}, between the ends: the body would use {inTenths(linear.value)} if it goes by focal
          length, {inTenths(logarithmic.value)} if by its logarithm; which is not published. Measured: {writeSteps(band.centre)}. {middleInWords(linear, logarithmic)}
        </p>
      ))}
      {!two && one && one.trade.length > 1 && <Trade options={one.trade} />}
      {uncounted.length > 0 && (
        <p class="muted small">
          Not counted: {uncounted.map(({ focalLength, distance, why }) => `${inMillimetres(millimetres(focalLength))} at ${inMetres(millimetres(distance))} (${why})`).join(', ')}.
        </p>
      )}
    </>
  );
}

function Values({ place: { one, two, evidence } }: { readonly place: Place }) {
  if (two) {
    const [wide] = two.wide.fits;
    const [tele] = two.tele.fits;
    return (
      <p class="enter">
        Wide{wide && `, ${inMillimetres(wide.band.focalLength)}`}: <b>{writeSteps(two.wide.value)}</b> Tele{tele && `, ${inMillimetres(tele.band.focalLength)}`}: <b>{writeSteps(two.tele.value)}</b>
      </p>
    );
  }
  if (!one) return null;
  const outside = one.fits.filter(({ inside }) => !inside).length;
  return (
    <>
      <p class="enter">
        Enter <b>{writeSteps(one.value)}</b>
      </p>
      <p>{outside === 0 ? servesAll(evidence.length) : one.trade.length > 1 ? `No value serves all ${evidence.length}; this one is outside ${outside}.` : `This is outside ${outside} of ${evidence.length}, by the weights given.`}</p>
    </>
  );
}

const servesAll = (count: number): string => (count === 1 ? 'It lies in the one band measured.' : `It lies in all ${count} bands.`);

const rowOf = ({ band, error, share, inside, past }: Fit) => (
  <tr key={band.id}>
    <th scope="row">
      {inMillimetres(band.focalLength)} at {inMetres(band.distance)}
    </th>
    <td>{writeSteps(error)}</td>
    <td>
      {Math.round(share * 100)} %, {inside ? 'inside' : `outside by ${past}`}
    </td>
  </tr>
);

function Trade({ options }: { readonly options: readonly Choice[] }) {
  return (
    <section class="notice">
      <div>
        <h3>What each value would serve</h3>
        <ul>
          {options.map(({ value, fits }) => (
            <li key={value}>
              <b>{writeSteps(value)}</b> holds at {listed(fits.filter(({ inside }) => inside))}; not at {fits.filter(({ inside }) => !inside).map((fit) => `${where(fit)} (${fit.past} past the end)`).join(', ')}.
            </li>
          ))}
        </ul>
      </div>
    </section>
  );
}

const where = ({ band }: Fit): string => `${inMillimetres(band.focalLength)}, ${inMetres(band.distance)}`;
const listed = (fits: readonly Fit[]): string => fits.map(where).join('; ');

function middleInWords(linear: Fit, logarithmic: Fit): string {
  if (linear.inside && logarithmic.inside) return 'Either lies in its band.';
  if (!linear.inside && !logarithmic.inside) return 'Neither lies in its band: prove it on photographs there.';
  return `Only the one by ${linear.inside ? 'focal length' : 'its logarithm'} lies in its band: prove it on photographs there.`;
}

function throughIt(lens: Lens, factor: number): string {
  const widest = lens.focal && widestAt(lens, lens.focal.to);
  const aperture = widest ? ` The lens becomes f/${Number(throughConverter(factor).fNumber(widest).toFixed(1))}.` : '';
  return `The body keeps this apart from the bare lens.${aperture}`;
}
