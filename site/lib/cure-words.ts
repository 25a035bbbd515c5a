import type { CureLimit, ExpressedAs, WeightBasis } from '@larderwright/calc/cure';

/** The form a limit's figure is written in, as a reader says it. */
export const EXPRESSED_AS: Readonly<Record<ExpressedAs, string>> = {
  'sodium-nitrite': 'sodium nitrite',
  'nitrite-ion': 'nitrite ion (NO₂⁻)',
  'nitrite-and-nitrate-salts': 'nitrite and nitrate salts together',
  'nitrite-and-nitrate-as-sodium-nitrite': 'nitrite and nitrate together, as sodium nitrite',
  'sodium-ascorbate-or-erythorbate': 'sodium ascorbate or erythorbate',
};

/** What a limit is counted on. */
export const WEIGHT_BASIS: Readonly<Record<WeightBasis, string>> = {
  'meat-block': 'raw meat, fat, liver and offal',
  total: 'everything in the bowl',
  finished: 'the finished product',
};

/** What a limit asks, in a phrase. */
export function limitPhrase({ substance, kind, role, heating }: CureLimit): string {
  const what = substance === 'nitrite' ? 'Nitrite' : 'Accelerator';
  const where = kind === 'ingoing' ? 'put in' : 'left in';
  const heated =
    heating === 'any'
      ? ''
      : heating === 'sterilised'
        ? ', sterilised in the pack'
        : ', heated below sterilising';
  if (role === 'naming-floor') return `${what} ${where}, at least, to bear the name${heated}`;
  if (role === 'policy-floor')
    return `${what} ${where}, at least, for the agency’s “keep refrigerated” policy${heated}`;
  return `${what} ${where}, at most${heated}`;
}
