// The score interval of a proportion (Wilson 1927, J. Am. Stat. Assoc. 22:209): honest for few trials and near 100 %.

/** 97.5 % point of the standard normal. */
const Z = 1.959964;

/** The 95 % interval of the share behind `successes` out of `of`; everything, where nothing was tried. */
export function scoreInterval(successes: number, of: number): { readonly low: number; readonly high: number } {
  if (of === 0) return { low: 0, high: 1 };
  const share = successes / of;
  const middle = share + Z ** 2 / (2 * of);
  const reach = Z * Math.sqrt((share * (1 - share)) / of + Z ** 2 / (4 * of ** 2));
  const scale = 1 + Z ** 2 / of;
  return { low: Math.max(0, (middle - reach) / scale), high: Math.min(1, (middle + reach) / scale) };
}
