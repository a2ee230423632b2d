// Exposures as they are read, stops and light as they are reckoned, kept over every form and round each bound.
import { expect, test } from 'vitest';
import { readAperture, readIsoSpeed, readShutter } from '../../src/optics/exposure.ts';
import { flicker, flickerShows, LIGHTINGS } from '../../src/optics/lamps.ts';
import { exposureValue, illuminance, lightVerdict, luminance, measuredEv, MID_GREY } from '../../src/optics/light.ts';
import { ev, fNumber } from '../../src/optics/quantity.ts';
import { exactAperture, exactIso, exactShutter } from '../../src/optics/stops.ts';
import { seconds } from '../../src/units.ts';
import { oneLine } from '../kept/oneLine.ts';

test('the exposure as the camera shows it', () => {
  const shutters = [
    '1/125',
    '1/125 s',
    '125',
    '0.5',
    '2"',
    '1"3',
    `1''3`,
    '2 s',
    '2',
    '3',
    '4',
    '4.5',
    '5 s',
    '1',
    '0',
    '0.3',
    '1/64000',
    '1/64001',
    '1/0',
    '64000',
    '64001',
    '3600 s',
    '3601 s',
    '3600"',
    '3601"',
    '1/1,000',
    '2 秒',
    '30 sek.',
    'x',
  ];
  expect(shutters.map((text) => oneLine([text, readShutter(text)]))).toMatchSnapshot('read shutter');
  expect(['2.8', 'f/2.8', 'F2,8', '1:2.8', '1 : 4', '0.6', '0.7', '128', '129', '200', ''].map((text) => oneLine([text, readAperture(text)]))).toMatchSnapshot(
    'read aperture',
  );
  expect(
    ['100', 'ISO 200', 'iso6', '5', '6', '6.5', '7', '3300000', '3300001', '3,300,000', '6600000', '1,600', 'x'].map((text) =>
      oneLine([text, readIsoSpeed(text)]),
    ),
  ).toMatchSnapshot('read iso speed');
});

test('shown numbers and the stops they stand for', () => {
  const apertures = [0.95, 1, 1.2, 1.4, 1.5, 1.8, 2, 2.2, 2.5, 2.8, 3.5, 4.5, 5.6, 6.7, 9, 9.5, 10, 11, 13, 22, 32, 33, 35, 64];
  expect(oneLine(apertures.map((shown) => exactAperture(fNumber(shown))))).toMatchSnapshot('exact aperture');
  const times = [1 / 8000, 1 / 3000, 1 / 1000, 1 / 350, 1 / 125, 1 / 60, 1 / 45, 1 / 15, 0.1, 0.3, 0.4, 0.7, 1, 1.3, 1.5, 6, 10, 13, 15, 17, 20, 30, 34];
  expect(oneLine(times.map((shown) => exactShutter(seconds(shown))))).toMatchSnapshot('exact shutter');
  expect(oneLine([50, 64, 80, 100, 125, 140, 160, 200, 280, 320, 800, 1250, 6400, 25_600, 110, 103, 107].map(exactIso))).toMatchSnapshot('exact iso');
});

test('light, and whether it is enough', () => {
  expect(oneLine([-3, 0, 7, 11].flatMap((each) => [luminance(ev(each)), illuminance(ev(each)), illuminance(ev(each), 0.5), MID_GREY]))).toMatchSnapshot(
    'luminance',
  );
  expect(oneLine([1 / 60, 1, 4].map((time) => exposureValue(fNumber(2.8), seconds(time))))).toMatchSnapshot('exposure value');
  expect(oneLine([100, 400, 1250].map((iso) => measuredEv({ iso, aperture: fNumber(2.8), shutter: seconds(1 / 60) })))).toMatchSnapshot('measured ev');
  expect(
    oneLine([6.9, 7, 7.1, 8.9, 9, 9.1].map((each) => [lightVerdict(ev(each)), lightVerdict(ev(each), { fine: ev(6.9), plenty: ev(8.9) })])),
  ).toMatchSnapshot('light verdict');
});

test('lamps on the mains, where an exposure holds few swells', () => {
  const swells = [
    0.1, 0.4, 0.5, 0.89, 0.9, 0.95, 1, 1.09, 1.12, 1.3, 1.79, 1.81, 2, 2.19, 2.3, 2.71, 3, 3.31, 3.5, 3.59, 3.61, 4, 4.39, 4.41, 4.5, 4.7, 5.4, 7.3, 20, 20.5,
    21.4,
  ];
  expect(
    LIGHTINGS.map((lighting) =>
      ([50, 60] as const).map((mains) => oneLine(swells.map((each) => (flickerShows(lighting, mains, seconds(each / (2 * mains))) ? 1 : 0)))),
    ),
  ).toMatchSnapshot('lightings');
  expect(oneLine([flicker(50), flicker(60)])).toMatchSnapshot('flicker');
});

test('a photograph is even at the very bound, half a swell off five', () => {
  expect(seconds(0.045) / flicker(50).period).toBe(4.5);
  expect(flickerShows('mains lamp', 50, seconds(0.045))).toBe(false);
});
