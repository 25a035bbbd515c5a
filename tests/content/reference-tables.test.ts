import { COOL_RULE_SETS } from '@larderwright/calc/cooling';
import { CURE_RULE_SETS } from '@larderwright/calc/cure';
import { COOK_RULE_SETS } from '@larderwright/calc/lethality';
import { describe, expect, it } from 'vitest';
import { FIGURES } from '../../content/figures/index.ts';
import { ALLERGEN_LISTS } from '../../content/reference/allergens.ts';
import { NITRATE_RULES } from '../../content/reference/nitrate.ts';
import { SHELF_RULES } from '../../content/reference/shelf.ts';
import { STAGE_GROUPS } from '../../content/reference/stages.ts';
import { KEEPING_GROUPS } from '../../content/reference/storage.ts';
import { ALL_SOURCES } from '../../content/sources.ts';
import { readCollection } from './read-content.ts';

const ids = (rows: readonly { id: string }[]) => rows.map(({ id }) => id);

describe('the allergen lists', () => {
  it('hold the fourteen of the European Union and the nine of the United States', () => {
    // Regulation (EU) No 1169/2011, Annex II; Food Allergen Labeling and Consumer Protection Act with the FASTER Act.
    const sizes = Object.fromEntries(ALLERGEN_LISTS.map(({ id, classes }) => [id, classes.length]));
    expect(sizes).toEqual({ 'eu-uk-14': 14, 'us-9': 9 });
  });
});

describe('the tables of limits', () => {
  it.each([
    { table: 'cooling-windows', sets: COOL_RULE_SETS },
    { table: 'cooking-lethality', sets: COOK_RULE_SETS },
    { table: 'nitrite-limits', sets: CURE_RULE_SETS },
  ])('list the sources of every rule set they show: $table', ({ table, sets }) => {
    const listed = readCollection('tables').find(({ id }) => id === table)?.data.sources;
    const leanOn = sets.flatMap(({ sources }) => sources);
    expect(leanOn.length).toBeGreaterThan(5);
    expect(leanOn.filter((id) => !(Array.isArray(listed) && listed.includes(id)))).toEqual([]);
  });
});

describe('the typed tables', () => {
  it('name only sources that exist', () => {
    const named = [
      ...ALLERGEN_LISTS.map(({ source }) => source),
      ...SHELF_RULES.map(({ source }) => source),
      ...NITRATE_RULES.map(({ source }) => source),
      ...KEEPING_GROUPS.flatMap(({ sources, times }) => [...sources, ...times.map(({ source }) => source)]),
    ];
    expect(named.filter((id) => !(id in ALL_SOURCES))).toEqual([]);
  });

  it('say of no row that it is known better than its source', () => {
    const rows = [
      ...SHELF_RULES,
      ...NITRATE_RULES,
      ...KEEPING_GROUPS.flatMap(({ times }) => times),
      ...ALLERGEN_LISTS,
    ];
    const better = rows.filter(
      ({ mark, source }) => mark === 'confirmed' && ALL_SOURCES[source]?.mark !== 'confirmed',
    );
    expect(better).toEqual([]);
  });

  it('give every row a place of its own', () => {
    for (const rows of [
      SHELF_RULES,
      NITRATE_RULES,
      STAGE_GROUPS.flatMap(({ stages }) => stages),
      KEEPING_GROUPS.flatMap(({ times }) => times),
      ALLERGEN_LISTS.flatMap(({ classes }) => classes),
    ])
      expect(new Set(ids(rows)).size).toBe(rows.length);
  });

  it('show under a stage the figure a technique page shows', () => {
    const named = STAGE_GROUPS.flatMap(({ stages }) =>
      stages.flatMap(({ aim, act }) => (act ? [aim, act] : [aim])),
    );
    expect(named.filter((id) => !['C', 'dC'].includes(FIGURES[id].unit))).toEqual([]);
  });
});
