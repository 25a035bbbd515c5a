import {
  CURE_RULE_SETS,
  type CureLimit,
  type CureReference,
  type ExpressedAs,
  type WeightBasis,
} from '@larderwright/calc/cure';
import {
  type CureRoute,
  WHOLE_MUSCLE_RULE_SETS,
  type WholeMuscleFinish,
  type WholeMuscleLimit,
  type WholeMuscleProduct,
} from '@larderwright/calc/dry-cure';
import type { RuleSet } from '@larderwright/calc/sources';

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
function limitPhrase({ substance, kind, role, heating }: CureLimit): string {
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

const PRODUCTS: Readonly<Record<WholeMuscleProduct, string>> = {
  bacon: 'bacon',
  ham: 'ham',
  other: 'other whole muscle',
};
const ROUTES: Readonly<Record<CureRoute, string>> = {
  dry: 'dry cure',
  immersion: 'in brine',
  pumped: 'pumped',
};
const FINISHES: Readonly<Record<WholeMuscleFinish, string>> = {
  cooked: 'cooked',
  'cook-before-eating': 'sold raw, to be cooked',
  'dried-raw': 'dried and eaten raw',
};

/** What of whole muscle a limit binds: its product, its cure, its end. */
function musclePhrase({ products, routes, finishes, traditional }: WholeMuscleLimit): string {
  const parts = [
    (products ?? []).map((product) => PRODUCTS[product]).join(' and '),
    (routes ?? []).map((route) => ROUTES[route]).join(' or '),
    (finishes ?? []).map((finish) => FINISHES[finish]).join(' or '),
    traditional === undefined
      ? ''
      : traditional
        ? 'listed traditional cures'
        : 'other than traditional cures',
  ].filter((part) => part !== '');
  const phrase = parts.join(', ');
  return phrase === '' ? 'Cured whole muscle' : phrase.charAt(0).toUpperCase() + phrase.slice(1);
}

/** One rule set of the page on nitrite, with what each row is called and where it is linked. */
export interface CureTable {
  readonly set: RuleSet;
  readonly rows: readonly { readonly id: string; readonly label: string; readonly limit: CureLimit }[];
  readonly references?: readonly CureReference[];
}

/** Mixed products first, then whole muscle, whose rule sets bear the same ids. */
export const CURE_TABLES: readonly CureTable[] = [
  ...CURE_RULE_SETS.map((set) => ({
    set: { ...set, title: `${set.title} (mixed products)` },
    rows: set.limits.map((limit) => ({ id: limit.id, label: limitPhrase(limit), limit })),
    ...(set.references ? { references: set.references } : {}),
  })),
  ...WHOLE_MUSCLE_RULE_SETS.map((set) => ({
    set: { ...set, id: `muscle-${set.id}`, title: `${set.title} (whole muscle)` },
    rows: set.limits.map((limit) => ({
      id: `muscle-${limit.id}`,
      label: `${musclePhrase(limit)}: ${limitPhrase(limit).replace(/^N/, 'n')}`,
      limit,
    })),
    ...(set.references
      ? { references: set.references.map((one) => ({ ...one, id: `muscle-${one.id}` })) }
      : {}),
  })),
];
