import { parseAllergens } from '../ingredients/index.ts';
import type { Dose, Spice } from './spice.ts';

function dose(lowGPerKg: number, typicalGPerKg: number, ceilingGPerKg: number): Dose {
  return { lowGPerKg, typicalGPerKg, ceilingGPerKg };
}

interface SpiceRow extends Pick<Spice, 'id' | 'name' | 'ingredientId' | 'doses'> {
  readonly strong?: boolean;
  readonly euAllergens?: string;
  readonly usAllergens?: string;
  readonly saltFraction?: Spice['saltFraction'];
}

function spice({
  strong = false,
  euAllergens = '',
  usAllergens = '',
  saltFraction = null,
  ...row
}: SpiceRow): Spice {
  return {
    ...row,
    strong,
    euAllergens: parseAllergens(euAllergens),
    usAllergens: parseAllergens(usAllergens),
    saltFraction,
  };
}

/**
 * Doses of spices, herbs and condiments, dry and ground unless the form says otherwise. Glutamate runs from none to a
 * typical 0.5–1. Common practice, no source.
 */
export const SPICES: readonly Spice[] = [
  spice({
    id: 'white-pepper',
    name: 'White pepper',
    ingredientId: 'pepper-white',
    doses: { ground: dose(1, 2, 4) },
  }),
  spice({
    id: 'black-pepper',
    name: 'Black pepper',
    ingredientId: 'pepper-black',
    doses: { ground: dose(1.5, 2.5, 5) },
  }),
  spice({
    id: 'green-peppercorn',
    name: 'Green peppercorn in brine, drained',
    ingredientId: 'kitchen-green-peppercorn-brined',
    doses: { plain: dose(4, 8, 15) },
    saltFraction: { min: 0.02, max: 0.05 },
  }),
  spice({
    id: 'pink-peppercorn',
    name: 'Pink peppercorn',
    ingredientId: null,
    doses: { whole: dose(0.5, 1.5, 3) },
  }),
  spice({ id: 'nutmeg', name: 'Nutmeg', ingredientId: 'nutmeg', doses: { ground: dose(0.3, 0.6, 1.2) } }),
  spice({ id: 'mace', name: 'Mace', ingredientId: 'mace', doses: { ground: dose(0.2, 0.5, 1) } }),
  spice({
    id: 'clove',
    name: 'Clove',
    ingredientId: 'clove',
    doses: { ground: dose(0.05, 0.15, 0.35) },
    strong: true,
  }),
  spice({
    id: 'allspice',
    name: 'Allspice',
    ingredientId: 'allspice',
    doses: { ground: dose(0.2, 0.5, 1.2) },
  }),
  spice({
    id: 'cinnamon',
    name: 'Cinnamon or cassia',
    ingredientId: 'cinnamon',
    doses: { ground: dose(0.05, 0.2, 0.6) },
    strong: true,
  }),
  spice({
    id: 'ginger',
    name: 'Ginger',
    ingredientId: 'ginger-ground',
    doses: { ground: dose(0.2, 0.5, 1.2) },
  }),
  spice({
    id: 'cardamom',
    name: 'Cardamom',
    ingredientId: 'cardamom',
    doses: { ground: dose(0.1, 0.3, 0.6) },
  }),
  spice({
    id: 'coriander-seed',
    name: 'Coriander seed',
    ingredientId: 'coriander-seed',
    doses: { ground: dose(0.5, 1.5, 4) },
  }),
  spice({ id: 'cumin', name: 'Cumin', ingredientId: 'cumin', doses: { ground: dose(0.2, 0.6, 1.5) } }),
  spice({ id: 'caraway', name: 'Caraway', ingredientId: 'caraway', doses: { ground: dose(0.3, 1, 2.5) } }),
  spice({
    id: 'fennel-seed',
    name: 'Fennel seed',
    ingredientId: 'fennel-seed',
    doses: { ground: dose(0.5, 1.5, 4) },
  }),
  spice({
    id: 'aniseed',
    name: 'Aniseed',
    ingredientId: 'anise-seed',
    doses: { ground: dose(0.1, 0.3, 0.8) },
  }),
  spice({
    id: 'star-anise',
    name: 'Star anise',
    ingredientId: null,
    doses: { ground: dose(0.05, 0.15, 0.4) },
  }),
  spice({
    id: 'juniper',
    name: 'Juniper',
    ingredientId: 'juniper-berry',
    doses: { ground: dose(0.5, 1.5, 3) },
    strong: true,
  }),
  spice({
    id: 'bay',
    name: 'Bay leaf',
    ingredientId: 'bay-leaf',
    doses: { ground: dose(0.1, 0.2, 0.5) },
    strong: true,
  }),
  spice({
    id: 'thyme',
    name: 'Thyme',
    ingredientId: 'thyme-dried',
    doses: { dried: dose(0.3, 0.7, 1.5), fresh: dose(1, 2.5, 5) },
  }),
  spice({
    id: 'rosemary',
    name: 'Rosemary',
    ingredientId: 'rosemary-dried',
    doses: { dried: dose(0.2, 0.5, 1), fresh: dose(0.6, 1.5, 3) },
  }),
  spice({
    id: 'sage',
    name: 'Sage',
    ingredientId: 'sage-ground',
    doses: { dried: dose(0.4, 1, 2), fresh: dose(1.5, 3, 6) },
  }),
  spice({
    id: 'marjoram',
    name: 'Marjoram',
    ingredientId: 'marjoram-dried',
    doses: { dried: dose(0.5, 1.5, 3) },
  }),
  spice({
    id: 'oregano',
    name: 'Oregano or savory',
    ingredientId: 'oregano-dried',
    doses: { dried: dose(0.2, 0.6, 1.5) },
  }),
  spice({
    id: 'tarragon',
    name: 'Tarragon',
    ingredientId: 'tarragon-dried',
    doses: { fresh: dose(2, 5, 10) },
  }),
  spice({ id: 'parsley', name: 'Parsley', ingredientId: 'parsley', doses: { fresh: dose(5, 15, 40) } }),
  spice({
    id: 'chives',
    name: 'Chives or chervil',
    ingredientId: 'chives',
    doses: { fresh: dose(4, 8, 20) },
  }),
  spice({ id: 'dill', name: 'Dill', ingredientId: 'dill-fresh', doses: { fresh: dose(3, 6, 15) } }),
  spice({
    id: 'garlic',
    name: 'Garlic',
    ingredientId: 'garlic',
    doses: { fresh: dose(1, 3, 8), ground: dose(0.3, 0.8, 2) },
    strong: true,
  }),
  spice({
    id: 'onion',
    name: 'Onion or shallot',
    ingredientId: 'onion-powder',
    doses: { cooked: dose(15, 30, 60), ground: dose(0.5, 1.5, 4) },
  }),
  spice({
    id: 'mustard',
    name: 'Mustard seed',
    ingredientId: 'mustard-seed',
    doses: { whole: dose(1, 4, 10), ground: dose(0.5, 2, 5) },
    euAllergens: 'mustard',
    usAllergens: '',
  }),
  spice({
    id: 'celery-seed',
    name: 'Celery seed or celeriac',
    ingredientId: 'celery-seed',
    doses: { ground: dose(0.1, 0.3, 0.8) },
    euAllergens: 'celery',
    usAllergens: '',
  }),
  spice({
    id: 'paprika-sweet',
    name: 'Paprika, sweet',
    ingredientId: 'paprika',
    doses: { ground: dose(1, 4, 15) },
  }),
  spice({
    id: 'paprika-smoked',
    name: 'Paprika, smoked',
    ingredientId: 'paprika',
    doses: { ground: dose(1, 3, 8) },
  }),
  spice({
    id: 'chilli',
    name: 'Cayenne or chilli flake',
    ingredientId: 'cayenne',
    doses: { ground: dose(0.1, 0.3, 1.5) },
    strong: true,
  }),
  spice({
    id: 'turmeric',
    name: 'Turmeric',
    ingredientId: 'turmeric',
    doses: { ground: dose(0.1, 0.3, 0.8) },
  }),
  spice({
    id: 'sichuan-pepper',
    name: 'Sichuan pepper',
    ingredientId: null,
    doses: { ground: dose(0.1, 0.4, 1) },
  }),
  spice({
    id: 'mushroom-powder',
    name: 'Dried cep or mushroom powder',
    ingredientId: null,
    doses: { ground: dose(1, 4, 10) },
  }),
  spice({ id: 'citrus-zest', name: 'Citrus zest', ingredientId: null, doses: { fresh: dose(0.5, 1.5, 4) } }),
  spice({ id: 'truffle', name: 'Truffle pieces', ingredientId: null, doses: { plain: dose(5, 15, 30) } }),
  spice({ id: 'sugar', name: 'Sugar', ingredientId: 'sugar-white', doses: { plain: dose(1, 3, 8) } }),
  spice({
    id: 'dextrose',
    name: 'Dextrose',
    ingredientId: 'dextrose-monohydrate',
    doses: { plain: dose(1, 2, 6) },
  }),
  spice({ id: 'honey', name: 'Honey', ingredientId: 'honey', doses: { plain: dose(2, 5, 12) } }),
  spice({
    id: 'soy-sauce',
    name: 'Soya sauce',
    ingredientId: 'soy-sauce',
    doses: { plain: dose(1, 4, 10) },
    euAllergens: 'soybeans; cereals containing gluten (wheat)',
    usAllergens: 'soybeans; wheat',
    saltFraction: { min: 0.14, max: 0.2 },
  }),
  spice({
    id: 'fish-sauce',
    name: 'Fish sauce',
    ingredientId: 'fish-sauce',
    doses: { plain: dose(1, 4, 10) },
    euAllergens: 'fish',
    usAllergens: 'fish',
    saltFraction: { min: 0.14, max: 0.2 },
  }),
  spice({
    id: 'anchovy',
    name: 'Anchovy, salted',
    ingredientId: 'anchovy-canned',
    doses: { plain: dose(1, 4, 10) },
    euAllergens: 'fish',
    usAllergens: 'fish',
    saltFraction: { min: 0.12, max: 0.2 },
  }),
  spice({
    id: 'msg',
    name: 'Monosodium glutamate or yeast extract',
    ingredientId: null,
    doses: { plain: dose(0, 0.75, 3) },
  }),
];
