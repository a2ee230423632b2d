// Corrections as they are said. Numbers are in figures, which a Japanese voice reads as they are said, also before what they count.

/** A correction as it is said: "プラス6", "マイナス12", "ゼロ". A half-step centre is "プラス4.5". */
export function sayCorrection(value: number): string {
  if (value === 0) return 'ゼロ';
  return `${value > 0 ? 'プラス' : 'マイナス'}${sayNumber(Math.abs(value))}`;
}

/** A number from 0 to 999, to the nearest half. */
export const sayNumber = (value: number): string => (value === 0 ? 'ゼロ' : String(Math.round(value * 2) / 2));
