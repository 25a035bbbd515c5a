import type { Mix } from '@larderwright/calc/formula';
import type { Constituent, Share } from '../parts/composition-bar.tsx';

const KNOWN = ['water', 'protein', 'fat', 'salt'] as const;

/**
 * A mix as one bar: what is known of each component, what the known lines hold beside the four (sugars, starch,
 * ash), and what lines of unknown composition may hold of anything.
 *
 * @returns null while the weight of the mix is not known
 */
export function sharesOf(mix: Mix): Share[] | null {
  const { totalG } = mix;
  if (totalG === null || !(totalG > 0)) return null;
  const grams = new Map<Constituent, number>();
  const add = (of: Constituent, massG: number) => grams.set(of, (grams.get(of) ?? 0) + massG);
  for (const [index, { massG }] of mix.water.contributions.entries()) {
    if (massG === null) return null;
    let restG = massG;
    let open = false;
    for (const of of KNOWN) {
      const part = mix[of].contributions[index]?.grams ?? null;
      open ||= part === null;
      add(of, part ?? 0);
      restG -= part ?? 0;
    }
    add(open ? 'unknown' : 'other', Math.max(0, restG));
  }
  const order: readonly Constituent[] = [...KNOWN, 'other', 'unknown'];
  return order
    .map((of) => ({ of, massG: grams.get(of) ?? 0, fraction: (grams.get(of) ?? 0) / totalG }))
    .filter(({ massG }) => massG > 0);
}
