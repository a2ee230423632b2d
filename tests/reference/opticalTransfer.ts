// What a lens without faults leaves of contrast, by diffraction and by defocus: closed forms and one integral that the measured edges and the
// tests' camera are compared with. Frequencies are in cycles a millimetre, or as shares ν of the cut-off 1/(λN).

/** 1/(λN): J. W. Goodman, Introduction to Fourier Optics, 6.4. Wavelength in millimetres, cycles a millimetre. */
export const cutOff = (fNumber: number, wavelength: number): number => 1 / (wavelength * fNumber);

/** Of a circular pupil in focus (Goodman, 6.4.4); 0 ≤ ν ≤ 1. */
export const diffractionContrast = (share: number): number => (2 / Math.PI) * (Math.acos(share) - share * Math.sqrt(1 - share ** 2));

/** Wavefront error at the pupil's rim, in waves, of an image that lies so far from the sensor (W. J. Smith, Modern Optical Engineering): δ/(8N²λ). */
export const defocusWaves = (defocus: number, fNumber: number, wavelength: number): number => defocus / (8 * fNumber ** 2 * wavelength);

/** Height of the diffraction peak, of a small defocus in waves (Born & Wolf, Principles of Optics, 8.8): (sin πW/πW)². */
export const strehl = (waves: number): number => (Math.sin(Math.PI * waves) / (Math.PI * waves)) ** 2;

/**
 * Transfer of a circular pupil out of focus by so many waves, negative where contrast is reversed (H. H. Hopkins, Proc. R. Soc. A 231:91, 1955): two pupils
 * shifted by ν to either side differ in phase by 8πWνx at x, and are added up over what they share.
 */
export function defocusTransfer(share: number, waves: number): number {
  const parts = 2000;
  const from = Math.asin(share);
  const part = (Math.PI / 2 - from) / parts;
  let sum = 0;
  for (let at = 0; at < parts; at++) {
    const turn = from + (at + 0.5) * part;
    sum += Math.cos(8 * Math.PI * waves * share * (Math.sin(turn) - share)) * Math.cos(turn) ** 2 * part;
  }
  return (4 / Math.PI) * sum;
}

/** Of a disc of blur by geometry alone (Hopkins 1955): 2J₁(x)/x, x = πfd. */
export function discContrast(frequency: number, diameter: number): number {
  const x = Math.PI * frequency * diameter;
  return x === 0 ? 1 : (2 * firstBessel(x)) / x;
}

/** J₁ by Bessel's integral: the mean of cos(τ − x sin τ) over half a turn. */
function firstBessel(x: number): number {
  const parts = 2000;
  let sum = 0;
  for (let at = 0; at < parts; at++) {
    const turn = ((at + 0.5) * Math.PI) / parts;
    sum += Math.cos(turn - x * Math.sin(turn));
  }
  return sum / parts;
}

/** On a phase-detection sensor the two images part by the defocus over the f-number of their base line (similar triangles). */
export const imageSeparation = (defocus: number, baseLine: number): number => defocus / baseLine;
