import {
  isFish,
  isLiver,
  isPorkLiver,
  isPoultry,
  isShellfish,
  joinAllergens,
  loadIngredientDetails,
  loadIngredients,
  loadPickList,
  parseAllergens,
  searchIngredients,
} from '@larderwright/calc/ingredients';
import { isSourceId } from '@larderwright/calc/sources';
import { describe, expect, it } from 'vitest';

const table = await loadIngredients();
const list = await loadPickList();
const details = await loadIngredientDetails();

function row(id: string) {
  const found = table.get(id);
  if (!found) throw new Error(`no row ${id}`);
  return found;
}

describe('the composition table', () => {
  it('holds every row carried in, once, by source', () => {
    const bySource = new Map<string, number>();
    for (const { source } of table.values())
      bySource.set(source ?? 'none', (bySource.get(source ?? 'none') ?? 0) + 1);
    // 367 foods and ice of SR28, 65 of Ciqual 2020, 15 formulas, 6 of the trade chart, juniper without data: 455.
    expect(bySource.get('usda-sr28')).toBe(368);
    expect(bySource.get('ciqual-2020')).toBe(65);
    expect(bySource.get('standard-atomic-weights')).toBe(15);
    expect(bySource.get('bind-constants-chart')).toBe(6);
    expect(bySource.get('none')).toBe(1);
    expect(table.size - (bySource.get('kitchen-compositions') ?? 0)).toBe(455);
    expect(new Set(list.map(({ id }) => id)).size).toBe(list.length);
    expect(list).toHaveLength(table.size);
    expect(details.size).toBe(455);
  });

  it.each([
    // USDA SR28 by NDB number: water, protein, fat in g, sodium in mg per 100 g.
    ['pork-ground', 'NDB 10219', 61.06, 16.88, 21.19, 56],
    ['pork-backfat', 'NDB 10004', 7.69, 2.92, 88.69, 11],
    ['pork-liver', 'NDB 10110', 71.06, 21.39, 3.65, 87],
    ['chicken-liver', 'NDB 05027', 76.46, 16.92, 4.83, 71],
    ['venison', 'NDB 17164', 73.57, 22.96, 2.42, 51],
    ['duck-meat-only', 'NDB 05141', 73.77, 18.28, 5.95, 74],
    ['nutmeg', 'NDB 02025', 6.23, 5.84, 36.31, 16],
    ['anchovy-canned', 'NDB 15002', 50.3, 28.89, 9.71, 3668],
    // Anses Ciqual 2020 by code.
    ['fr-pork-backfat', '28470', 16.1, 4.51, 80.6, 41.6],
    ['fr-rabbit-liver', '40110', 70.8, 19, 4, 69.5],
  ])('%s is as its source prints it (%s)', (id, foodId, water, protein, fat, sodium) => {
    const found = row(id);
    expect(found.foodId).toBe(foodId);
    expect(found.waterFraction).toBeCloseTo(water / 100, 10);
    expect(found.proteinFraction).toBeCloseTo(protein / 100, 10);
    expect(found.fatFraction).toBeCloseTo(fat / 100, 10);
    // Regulation (EU) No 1169/2011, Annex I: salt = sodium × 2.5.
    expect(found.saltFraction).toBeCloseTo((sodium * 2.5) / 1000 / 100, 10);
  });

  it('keeps a blank as unknown, never as zero', () => {
    // Ciqual 2020 prints no water for roe deer (14005) and raw duck foie gras (8328), SR28 no sodium for wild boar (17158).
    expect(row('fr-roe-deer').waterFraction).toBe(null);
    expect(row('fr-foie-gras-duck-raw').waterFraction).toBe(null);
    expect(row('wild-boar').saltFraction).toBe(null);
    expect(row('juniper-berry').fatFraction).toBe(null);
    expect(row('juniper-berry').mark).toBe(null);
    // A printed zero stays a zero: SR28 NDB 04002, lard.
    expect(row('lard').proteinFraction).toBe(0);
  });

  it('takes only sodium chloride for salt in salts and additives', () => {
    // From the formulas: 100 − 6.25, 100 − 0.6, 100 − 6.25 − 4.
    expect(row('curing-salt-us-1').saltFraction).toBeCloseTo(0.9375, 10);
    expect(row('curing-salt-eu-0.6').saltFraction).toBeCloseTo(0.994, 10);
    expect(row('curing-salt-us-2').saltFraction).toBeCloseTo(0.8975, 10);
    for (const id of ['sodium-nitrite', 'sodium-erythorbate', 'baking-soda', 'msg-monohydrate'])
      expect(row(id).saltFraction).toBe(0);
  });

  it('has fractions between 0 and 1 that do not add up to more than the source’s own oddities allow', () => {
    for (const { id, waterFraction, proteinFraction, fatFraction, saltFraction } of table.values()) {
      const parts = [waterFraction, proteinFraction, fatFraction, saltFraction];
      for (const part of parts) if (part !== null) expect(part >= 0 && part <= 1, id).toBe(true);
      const sum = (waterFraction ?? 0) + (proteinFraction ?? 0) + (fatFraction ?? 0);
      // Worst published case: quail with skin, 102.2 g of proximates (SR28 NDB 05157); Ciqual up to 103.1 g.
      expect(sum, id).toBeLessThan(1.035);
    }
  });

  it('names a registered source and a mark for every row but the one without data', () => {
    for (const found of table.values()) {
      if (found.id === 'juniper-berry') continue;
      expect(found.source !== null && isSourceId(found.source), found.id).toBe(true);
      expect(found.mark, found.id).not.toBe(null);
    }
  });

  it('names no web address and no one’s copy', () => {
    expect(JSON.stringify([...table.values()]) + JSON.stringify([...details.values()])).not.toMatch(
      /https?:|www\.|\.com|github|SR28-PSQL/i,
    );
  });

  it('carries the rest of each row: waste, density, energy, flags', () => {
    // SR28: NDB 10080 refuse 24 % (bone 9, connective tissue 15), NDB 10219 263 kcal; SR28 prints no EU energy.
    expect(details.get('pork-butt-lf')?.refusePercent).toBe(24);
    expect(details.get('pork-ground')?.energyKcal).toBe(263);
    expect(details.get('pork-ground')?.energyKjEu).toBe(null);
    expect(details.get('walnut')?.euCountsAsMeat).toBe('');
  });

  it('gives the kitchen’s own rows without the large table, and knows no strangers', async () => {
    const few = await loadIngredients(['kitchen-pork-liver', 'kitchen-nothing']);
    expect([...few.keys()]).toEqual(['kitchen-pork-liver']);
    expect((await loadIngredients(['pork-liver'])).size).toBe(1);
    expect((await loadIngredients([])).size).toBe(0);
  });
});

describe('species groups', () => {
  it.each([
    // Canadian Food Inspection Agency: these birds count as poultry.
    'duck-meat-only',
    'duck-wild-breast',
    'goose-liver',
    'guinea-meat-only',
    'quail-meat-skin',
    'pheasant-meat-only',
    'pigeon-meat-only',
    'chicken-liver',
    'duck-fat',
    'stock-chicken',
    'kitchen-pheasant',
  ])('%s is poultry', (id) => expect(isPoultry(row(id))).toBe(true));

  it.each(['egg-whole', 'kitchen-egg', 'rabbit-domestic', 'pork-liver', 'venison', 'cream-heavy'])(
    '%s is not',
    (id) => expect(isPoultry(row(id))).toBe(false),
  );

  it('counts partridge and ostrich, of which no row exists', () => {
    const bird = { id: 'x', name: 'X', category: 'meat', speciesGroup: 'game' };
    expect(isPoultry({ ...bird, species: 'partridge' })).toBe(true);
    expect(isPoultry({ ...bird, species: 'ostrich' })).toBe(true);
  });

  it('tells liver, pork liver, fish and shellfish', () => {
    expect(isLiver(row('fr-rabbit-liver'))).toBe(true);
    expect(isLiver(row('ref-liverwurst'))).toBe(false);
    expect(isPorkLiver(row('kitchen-pork-liver'))).toBe(true);
    expect(isPorkLiver(row('chicken-liver'))).toBe(false);
    expect(isFish(row('kitchen-trout'))).toBe(true);
    expect(isFish(row('scallop'))).toBe(false);
    expect(isShellfish(row('scallop'))).toBe(true);
  });
});

describe('allergens', () => {
  it('follow each law’s own list', () => {
    // Regulation (EU) No 1169/2011, Annex II; FALCPA 2004 and FASTER 2021 with the tree-nut list of January 2025.
    const names = (id: string, law: 'us' | 'eu') =>
      (law === 'us' ? row(id).usAllergens : row(id).euAllergens).map(({ name }) => name);
    expect(names('scallop', 'us')).toEqual([]);
    expect(names('scallop', 'eu')).toEqual(['molluscs']);
    expect(names('pine-nut', 'us')).toEqual(['tree nuts']);
    expect(names('pine-nut', 'eu')).toEqual([]);
    expect(names('chestnut-boiled', 'us')).toEqual([]);
    expect(names('chestnut-boiled', 'eu')).toEqual([]);
    expect(names('celery', 'us')).toEqual([]);
    expect(names('celery', 'eu')).toEqual(['celery']);
    expect(names('kitchen-bread-white', 'eu')).toEqual(['cereals containing gluten']);
  });

  it('are read with their kinds and their doubts', () => {
    expect(parseAllergens('mustard; cereals containing gluten (barley, check)')).toEqual([
      { name: 'mustard', kinds: [], toCheck: false },
      { name: 'cereals containing gluten', kinds: ['barley'], toCheck: true },
    ]);
    expect(parseAllergens('')).toEqual([]);
  });

  it('of several ingredients are joined, and one sure case settles a doubt', () => {
    const joined = joinAllergens([
      parseAllergens('nuts (walnut)'),
      parseAllergens('nuts (hazelnut); celery (check)'),
      parseAllergens('celery'),
      parseAllergens('mustard (check)'),
    ]);
    expect(joined).toEqual([
      { name: 'celery', kinds: [], toCheck: false },
      { name: 'mustard', kinds: [], toCheck: true },
      { name: 'nuts', kinds: ['hazelnut', 'walnut'], toCheck: false },
    ]);
  });
});

describe('a search by name', () => {
  const first = (text: string) => searchIngredients(list, text)[0]?.id;

  it('finds what a cook calls it', () => {
    expect(first('backfat')).toBe('kitchen-pork-backfat');
    expect(searchIngredients(list, 'pink salt').map(({ id }) => id)).toContain('curing-salt-us-1');
    expect(searchIngredients(list, 'port').map(({ id }) => id)).toContain('wine-fortified-sweet');
    expect(searchIngredients(list, 'squab').map(({ id }) => id)).toContain('pigeon-meat-only');
    expect(first('double cream')).toBe('kitchen-cream-48');
  });

  it('takes words in any order, any case, with or without accents', () => {
    expect(first('LIVER chicken')).toBe('kitchen-chicken-liver');
    expect(searchIngredients(list, 'pâté').length).toBeGreaterThan(0);
    expect(searchIngredients(list, 'pate')).toEqual(searchIngredients(list, 'pâté'));
  });

  it('finds nothing for nothing, for nonsense, and quickly for a flood', () => {
    expect(searchIngredients(list, '')).toEqual([]);
    expect(searchIngredients(list, '  ,')).toEqual([]);
    expect(searchIngredients(list, 'zzqx')).toEqual([]);
    expect(searchIngredients(list, 'a '.repeat(1e5)).length).toBeLessThanOrEqual(20);
  });
});
