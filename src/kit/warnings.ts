// What a body cannot keep apart or will soon not keep at all, said before a value is lost in it. The manual of the
// body has the last word: bodies differ in what they count as a lens.
import { isRetired } from './change.ts';
import { pairingsOf, type Body, type Kit, type Lens, type Situation } from './kit.ts';

interface About {
  readonly body: Pick<Body, 'id' | 'name'>;
  /** The lenses concerned. */
  readonly lenses: readonly Pick<Lens, 'id' | 'name' | 'serial'>[];
}

export type Warning =
  /** `surely`: the body is known not to tell copies apart; otherwise nobody has said. */
  | ({ readonly about: 'shared value'; readonly surely: boolean } & About)
  | ({ readonly about: 'memory'; readonly remembers: number; readonly left: number } & About);

/** Places left at which the memory counts as nearly full. */
const NEARLY = 2;

/** Warnings for every body in use. `entered`: the situations whose value is in the camera. */
export function warningsOf(kit: Kit, entered: ReadonlySet<string>): Warning[] {
  const away = isRetired(kit);
  const pairing = pairingsOf(kit);
  return kit.bodies
    .filter(({ retired }) => retired === null)
    .flatMap((body) => {
      const used = kit.situations
        .filter((situation) => situation.body === body.id && !away(situation))
        .flatMap((situation) => {
          const { lens } = pairing(situation);
          return lens ? [{ situation, lens }] : [];
        });
      const stored = used.filter(({ situation }) => entered.has(situation.id));
      return [...sharedValues(body, used), ...memory(body, stored)];
    });
}

/** Those that matter before a value of this situation is entered. */
export const warningsFor = ({ body, lens }: Situation, warnings: readonly Warning[]): Warning[] =>
  warnings.filter((warning) => warning.body.id === body && (warning.about === 'memory' || warning.lenses.some(({ id }) => id === lens)));

interface Use {
  readonly situation: Situation;
  readonly lens: Lens;
}

function sharedValues(body: Body, used: readonly Use[]): Warning[] {
  if (body.copies === 'told apart') return [];
  const copies = new Map<string, Map<string, Lens>>();
  for (const { lens } of used) {
    const group = copies.get(modelKey(lens)) ?? new Map<string, Lens>();
    copies.set(modelKey(lens), group.set(lens.id, lens));
  }
  return [...copies.values()]
    .filter((group) => group.size > 1)
    .map((group) => ({
      about: 'shared value',
      body,
      lenses: [...group.values()],
      surely: body.copies === 'share a value',
    }));
}

function memory(body: Body, stored: readonly Use[]): Warning[] {
  if (body.remembers === null) return [];
  const places = new Set(stored.map(({ situation, lens }) => `${placeKey(body, lens)} ${situation.converter ?? ''}`));
  const left = Math.max(0, body.remembers - places.size);
  if (left > NEARLY) return [];
  const lenses = [...new Set(stored.map(({ lens }) => lens))];
  return [{ about: 'memory', body, lenses, remembers: body.remembers, left }];
}

/** Lenses of one model count as copies; without a model, those of one name. */
const modelKey = (lens: Lens): string => (lens.model ?? lens.name).toLowerCase().replace(/\s+/g, ' ');
const placeKey = (body: Body, lens: Lens): string => (body.copies === 'share a value' ? modelKey(lens) : lens.id);
