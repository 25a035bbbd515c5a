import {
  COMPONENTS,
  CONDUCTIVITY,
  type Component,
  type Composition,
  conductivityWmK,
  DENSITY,
  densityKgM3,
  FILMS,
  initialFreezingC,
  quadraticAt,
  SPECIFIC_HEAT,
  specificHeatJkgK,
  WALLS,
  type WallMaterial,
  waterHeatAt,
} from '@larderwright/calc/heat';
import { type Ingredient, loadIngredients } from '@larderwright/calc/ingredients';
import { fixedText, plainText } from '@larderwright/calc/quantities';
import { column, numberColumn, plainCell, type TablePart } from '../../lib/table-model.ts';

/** Where foods and parts are shown, °C: a raw mix in the cold, and one that is cooked. */
const SHOWN_C = [5, 70] as const;

const PART_NAMES: Readonly<Record<Component, string>> = {
  water: 'Water',
  protein: 'Protein',
  fat: 'Fat',
  carbohydrate: 'Carbohydrate',
  fibre: 'Fibre',
  ash: 'Ash and salt',
};

const FOODS = [
  'kitchen-pork-shoulder-80-20',
  'kitchen-pork-shoulder-lean-95',
  'kitchen-pork-backfat',
  'kitchen-pork-liver',
  'kitchen-chicken-liver',
  'kitchen-chicken-thigh',
  'kitchen-egg',
  'kitchen-cream-35',
  'kitchen-butter',
] as const;

const FILM_NAMES: Readonly<Record<keyof typeof FILMS, string>> = {
  stillOven: 'Oven without a fan',
  fanOven: 'Oven with a fan',
  coveredSpace: 'Covered pan over a bath, steam and air',
  steamOven: 'Steam oven',
  stillBath: 'Hot bath at rest',
  poachingWater: 'Poaching water',
  room: 'Kitchen air',
  refrigerator: 'Refrigerator, still air',
  blast: 'Blast chiller',
  stillIceWater: 'Ice water at rest',
  stirredIceWater: 'Ice water, stirred',
};

const WALL_NAMES: Readonly<Record<WallMaterial, string>> = {
  stoneware: 'Stoneware',
  porcelain: 'Porcelain',
  glass: 'Glass',
  'cast-iron': 'Cast iron',
  'stainless-steel': 'Stainless steel',
  tinplate: 'Tinplate',
  aluminium: 'Aluminium',
  silicone: 'Silicone',
};

const heatOf = (part: Component, tempC: number) =>
  part === 'water' ? waterHeatAt(tempC) : quadraticAt(SPECIFIC_HEAT[part], tempC);
const keysOf = <Key extends string>(record: Readonly<Record<Key, unknown>>) => Object.keys(record) as Key[];

/** What water, protein and fat leave: a hundredth of it ash, the rest carbohydrate. */
function compositionOf({ waterFraction, proteinFraction, fatFraction }: Ingredient): Composition | null {
  if (waterFraction === null || proteinFraction === null || fatFraction === null) return null;
  const rest = Math.max(0, 1 - waterFraction - proteinFraction - fatFraction);
  const ash = Math.min(rest, 0.01);
  return {
    water: waterFraction,
    protein: proteinFraction,
    fat: fatFraction,
    carbohydrate: rest - ash,
    fibre: 0,
    ash,
  };
}

function foodRow(food: Ingredient): TablePart['rows'] {
  const composition = compositionOf(food);
  if (!composition) return [];
  const freezing = initialFreezingC(composition);
  return [
    {
      id: food.id,
      cells: [
        food.name,
        ...SHOWN_C.map((t) => fixedText(conductivityWmK(composition, t), 2)),
        ...SHOWN_C.map((t) => fixedText(specificHeatJkgK(composition, t) / 1000, 2)),
        fixedText(densityKgM3(composition, SHOWN_C[0]), 0),
        freezing === null ? '–' : plainCell(Math.round(freezing * 10) / 10),
      ],
      mark: 'derived',
    },
  ];
}

const [COLD, HOT] = SHOWN_C;
const AT = [`at ${COLD} °C`, `at ${HOT} °C`];

/** What the simulation of heat reckons with. */
export async function thermalProperties(): Promise<readonly TablePart[]> {
  const foods = await loadIngredients(FOODS);
  return [
    {
      id: 'foods',
      title: 'Foods, worked out from their parts',
      notes: [
        'From water, protein and fat of the kitchen’s own rows; what is left is a little ash and otherwise carbohydrate. Fat that melts takes up more heat than this says.',
      ],
      sources: ['choi-okos-1986', 'ashrae-refrigeration-2006-foods', 'pham-1996', 'kitchen-compositions'],
      columns: [
        column('Food'),
        ...AT.map((at) => numberColumn(`W/(m·K) ${at}`)),
        ...AT.map((at) => numberColumn(`kJ/(kg·K) ${at}`)),
        numberColumn(`kg/m³ ${AT[0]}`),
        column('First ice at'),
      ],
      rows: [...foods.values()].flatMap(foodRow),
    },
    {
      id: 'parts',
      title: 'The parts of food',
      notes: [],
      sources: ['choi-okos-1986', 'ashrae-refrigeration-2006-foods'],
      columns: [
        column('Part'),
        ...AT.map((at) => numberColumn(`W/(m·K) ${at}`)),
        ...AT.map((at) => numberColumn(`kJ/(kg·K) ${at}`)),
        ...AT.map((at) => numberColumn(`kg/m³ ${at}`)),
      ],
      rows: COMPONENTS.map((part) => ({
        id: `part-${part}`,
        cells: [
          PART_NAMES[part],
          ...SHOWN_C.map((t) => fixedText(quadraticAt(CONDUCTIVITY[part], t), 3)),
          ...SHOWN_C.map((t) => fixedText(heatOf(part, t) / 1000, 3)),
          ...SHOWN_C.map((t) => fixedText(quadraticAt(DENSITY[part], t), 0)),
        ],
        mark: 'derived' as const,
      })),
    },
    {
      id: 'walls',
      title: 'Walls of moulds',
      notes: ['The usual thickness is a habit of the trade.'],
      sources: ['martinez-solids'],
      columns: [
        column('Wall'),
        numberColumn('W/(m·K)'),
        numberColumn('MJ/(m³·K)'),
        numberColumn('Usual, mm'),
      ],
      rows: keysOf(WALLS).map((wall) => ({
        id: `wall-${wall}`,
        cells: [
          WALL_NAMES[wall],
          plainText(WALLS[wall].conductivityWmK),
          fixedText(WALLS[wall].heatCapacityJm3K / 1e6, 2),
          plainText(WALLS[wall].usualMm),
        ],
        mark: 'memory' as const,
      })),
    },
    {
      id: 'films',
      title: 'How well the surroundings pass heat',
      notes: [
        'W/(m²·K), convection and radiation together. The usual figure is our choice, on the slow side for cold.',
      ],
      sources: ['film-coefficient-ranges'],
      columns: [column('Surroundings'), numberColumn('Low'), numberColumn('Usual'), numberColumn('High')],
      rows: keysOf(FILMS).map((film) => ({
        id: `film-${film.toLowerCase()}`,
        cells: [
          FILM_NAMES[film],
          plainText(FILMS[film].low),
          plainText(FILMS[film].usual),
          plainText(FILMS[film].high),
        ],
        mark: 'memory' as const,
      })),
    },
  ];
}
