import type { PublishedCheck } from './check.ts';
import cookingTables from './cooking-tables.json' with { type: 'json' };
import cure from './cure.json' with { type: 'json' };
import curing from './curing.json' with { type: 'json' };
import growth from './growth.json' with { type: 'json' };
import heat from './heat.json' with { type: 'json' };
import label from './label.json' with { type: 'json' };
import lethality from './lethality.json' with { type: 'json' };
import trends from './trends.json' with { type: 'json' };
import yields from './yield.json' with { type: 'json' };

export interface CheckList {
  readonly slug: string;
  readonly title: string;
  readonly checks: readonly PublishedCheck[];
}

/** Every list the tests keep, in the order of the page. The files are written by `npm run checks`, never by hand. */
export const CHECK_LISTS: readonly CheckList[] = [
  { slug: 'cure', title: 'Nitrite and salt', checks: cure as PublishedCheck[] },
  { slug: 'curing', title: 'Dry cure, brine and drying', checks: curing as PublishedCheck[] },
  { slug: 'cooking-tables', title: 'Cooking tables', checks: cookingTables as PublishedCheck[] },
  { slug: 'lethality', title: 'Heat and time against germs', checks: lethality as PublishedCheck[] },
  { slug: 'heat', title: 'Heating and cooling of the meat', checks: heat as PublishedCheck[] },
  { slug: 'growth', title: 'Growth of germs', checks: growth as PublishedCheck[] },
  { slug: 'label', title: 'Energy on the label', checks: label as PublishedCheck[] },
  { slug: 'yield', title: 'Yield and cost', checks: yields as PublishedCheck[] },
  { slug: 'trends', title: 'Control limits', checks: trends as PublishedCheck[] },
];

/** What is tested and not yet listed on the page, in words. */
export const NOT_YET_LISTED: readonly string[] = [
  'The curing limits of each rule set, and the smaller tables of cooking, parasites and poultry. Their tests stand beside the limits.',
  'Composition of ingredients against the published tables, row by row.',
  'Gelatine, casings, seasoning, sizes of moulds and weight of the press.',
  'Checks we worked out ourselves, twice and by different ways. They prove the arithmetic, and no outside world.',
];
