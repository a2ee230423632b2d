// How square to the camera the target must be. Tilted by θ, a target's detail at the edge of an AF area that reaches
// h from its middle on the sensor is out of focus there by m·h·tan θ (x = h/m, dz = x·tan θ, dv = m²·dz). Half a step
// is allowed.
import { millimetres, type Millimetres } from '../units.ts';
import type { Blur } from './depthOfField.ts';
import { fromRadians, radians, type Degrees, type Magnification } from './quantity.ts';
import { stepAtSensor, type StepWorth } from './stepWorth.ts';

/** An AF area's size on the sensor, edge to edge. The detector is often larger than its frame in the viewfinder (from
 *  memory), so the usual one is generous to a single centre point. */
export const USUAL_AF_AREA: Millimetres = millimetres(2.5);

/** Length of the target that the AF area sees. */
export const areaAtTarget = (area: Millimetres, m: Magnification): Millimetres => millimetres(area / m);

/** Defocus at the sensor, at the edge of the AF area, of a target tilted so. */
export const edgeDefocus = (area: Millimetres, m: Magnification, tilt: Degrees): Millimetres => millimetres(m * (area / 2) * Math.tan(Math.abs(radians(tilt))));

/** The tilt that costs half a step at the edge of the AF area. */
export const allowedTilt = (blur: Blur, worth: StepWorth, area: Millimetres, m: Magnification): Degrees =>
  fromRadians(Math.atan(stepAtSensor(blur, worth) / 2 / (m * (area / 2))));

/** A tilt that anybody sees without a mirror (from memory). Where more than that is allowed, its figure tells nothing. */
const SEEN_BY_EYE = 10;

export const eyeIsEnough = (allowed: Degrees): boolean => allowed > SEEN_BY_EYE;

/** How much nearer one edge of a target so wide stands than the other. */
export const depthAcross = (tilt: Degrees, width: Millimetres): Millimetres => millimetres(width * Math.sin(Math.abs(radians(tilt))));
