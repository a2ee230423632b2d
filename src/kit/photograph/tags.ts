// The dozen tags of a photograph that tell what it was taken with, by their numbers (CIPA DC-008, 'Exchangeable image
// file format', 4.6.4 and 4.6.5; the first two are TIFF 6.0's).
export const TAG = {
  model: 0x0110,
  dateTime: 0x0132,
  exifPointer: 0x8769,
  fNumber: 0x829d,
  dateTimeOriginal: 0x9003,
  offsetTimeOriginal: 0x9011,
  maxApertureValue: 0x9205,
  subjectDistance: 0x9206,
  focalLength: 0x920a,
  bodySerialNumber: 0xa431,
  lensSpecification: 0xa432,
  lensModel: 0xa434,
  lensSerialNumber: 0xa435,
} as const;
