// The same blur seen at the sensor: how far it may stand from the sharp image. Geometric: 2Nc(1 + m/P) (J. Conrad,
// Depth of Field in Depth, 2004-06); by a quarter wave of error: ±2λN² (W. J. Smith, Modern Optical Engineering); the
// Airy disc's first dark ring: 2.44·λN across (Born & Wolf, Principles of Optics, 8.5.2).
import { millimetres, type Millimetres } from '../units.ts';
import type { Blur } from './depthOfField.ts';
import { fNumber, type FNumber, type Magnification } from './quantity.ts';

/** Green light, where the eye and the sensor see best. */
const GREEN: Millimetres = millimetres(0.00055);

/** The f-number at the sensor: the lens moves away from it to focus near. */
const workingAperture = (aperture: FNumber, m: Magnification | 0, pupilRatio = 1): FNumber => fNumber(aperture * (1 + m / pupilRatio));

/** From end to end; at magnification 0 the lens is at infinity. */
export const depthOfFocus = (blur: Blur, m: Magnification | 0): Millimetres =>
  millimetres(2 * workingAperture(blur.aperture, m, blur.pupilRatio) * blur.confusion);

/** To either side of the sharp image, by a quarter wave. */
export const quarterWaveDepth = (aperture: FNumber, wavelength: Millimetres = GREEN): Millimetres => millimetres(2 * wavelength * aperture ** 2);

/** Across the first dark ring. */
export const airyDisc = (aperture: FNumber, wavelength: Millimetres = GREEN): Millimetres => millimetres(2.44 * wavelength * aperture);

/** The Airy disc against the circle of confusion: past 1, stopping down further blurs the whole picture. */
export const airyShare = ({ aperture, confusion }: Blur): number => airyDisc(aperture) / confusion;
