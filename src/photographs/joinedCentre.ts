// Two centres of one situation, by the light in the viewfinder and by photographs: whether they agree, and what they say together (the mean
// weighted by one over the variance: P. R. Bevington, D. K. Robinson, Data Reduction and Error Analysis, 3rd ed. 2003, ch. 4).
import { around, doubtOf, NORMAL_MARGIN, type WithInterval } from './withInterval.ts';

/** In steps. */
export type JoinedCentre =
  | { readonly is: 'agree'; readonly difference: WithInterval; readonly joint: WithInterval }
  /** The bracket's less the band's. */
  | { readonly is: 'differ'; readonly difference: WithInterval };

export function joinCentres(band: WithInterval, bracket: WithInterval): JoinedCentre {
  const [one, other] = [doubtOf(band) ** 2, doubtOf(bracket) ** 2];
  const difference = around(bracket.value - band.value, NORMAL_MARGIN * Math.sqrt(one + other));
  if (difference.low > 0 || difference.high < 0) return { is: 'differ', difference };
  const value = one + other === 0 ? band.value : (band.value * other + bracket.value * one) / (one + other);
  return { is: 'agree', difference, joint: around(value, NORMAL_MARGIN * Math.sqrt(one + other === 0 ? 0 : (one * other) / (one + other))) };
}
