// What is stated of the centre, which is more modest than what the search goes by: it must also be true of the rarer lights, and of
// eyes that tired for a while. Where some holds hardly fit one band, one band and a spell of misjudged holds count as equally likely
// beforehand (a Bayesian average over models: Hoeting et al. 1999, Statist. Sci. 14:382, eq. 1).
import { mixed, modest, type Bands, type Belief } from '../belief/belief.ts';
import { believed, type Weighed } from './story.ts';

/** The bands with the chances that are stated; `stories` are those of all the holds behind the belief. */
export function statedOf(belief: Belief, stories: readonly Weighed[]): Bands {
  const told = modest(belief);
  const spell = stories.find(({ story }) => story.is === 'misjudged');
  if (!spell) return told;
  const ofTold = believed(stories)?.bayesFactor ?? 1;
  return mixed(told, spell.bands, spell.bayesFactor / (ofTold + spell.bayesFactor));
}
