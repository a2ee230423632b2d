// Sharpness as it is compared between sensors: line pairs a picture height. One line pair is one cycle (ISO 12233:2017, 3.12, counts line widths,
// two to a pair).

/** From cycles a pixel; `height` in pixels, of the picture as it came out of the camera, the shorter side. */
export const lpPerHeight = (cyclesPerPixel: number, height: number): number => cyclesPerPixel * height;
