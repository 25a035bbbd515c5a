import { WATER_ACTIVITY_TABLE } from '@larderwright/calc/brine';
import {
  DEGREE_HOUR_TABLES,
  type DegreeHourTable,
  RATIO_CLASSES,
  type RatioClass,
  WATER_ACTIVITY_LIMITS,
  type WaterActivityLimit,
} from '@larderwright/calc/drying';
import { fixedText, plainText } from '@larderwright/calc/quantities';
import { FIGURES, type FigureId } from '../../../content/figures/index.ts';
import { SHELF_RULES } from '../../../content/reference/shelf.ts';
import { column, figureCell, numberColumn, plainCell, type TablePart } from '../../lib/table-model.ts';

const LIMIT_NAMES: Readonly<Record<string, string>> = {
  'no-nitrite-statement-may-go': 'A product made without nitrite may leave off the “keep refrigerated” words',
  'country-ham': 'Country ham, dry cured ham: at most',
  'botulinum-cold-growing': 'Clostridium botulinum, cold-growing',
  salmonella: 'Salmonella',
  'bacillus-cereus': 'Bacillus cereus',
  'botulinum-proteolytic': 'Clostridium botulinum, proteolytic',
  perfringens: 'Clostridium perfringens',
  listeria: 'Listeria',
  staphylococcus: 'Staphylococcus aureus',
  'semi-dry-sausage': 'Semi-dry sausage',
  'dry-sausage': 'Dry sausage',
  'dried-ham-coppa-jerky': 'Dried ham, coppa, jerky',
};

const CLASS_NAMES: Readonly<Record<string, string>> = {
  jerky: 'Jerky',
  pepperoni: 'Pepperoni',
  'dry-sausage': 'Dry sausage',
  genoa: 'Genoa salami',
  'dry-sausage-1982': 'Dry sausage, by the trade’s definition',
  'semi-dry-sausage': 'Semi-dry sausage, shelf-stable',
  thuringer: 'Thuringer',
};

/** A name for an id, so that a row added to calc cannot go unnamed here. */
function named(names: Readonly<Record<string, string>>, id: string): string {
  const name = names[id];
  if (name === undefined) throw new Error(`site/tables/models/water-activity.ts has no name for "${id}".`);
  return name;
}

const value = ({ low, high }: WaterActivityLimit) =>
  [low, high]
    .filter((one) => one !== null)
    .map((one) => fixedText(one, one * 100 === Math.round(one * 100) ? 2 : 3))
    .join('–');

const limitPart = (
  group: WaterActivityLimit['group'],
  id: string,
  title: string,
  notes: readonly string[],
  head: string,
): TablePart => {
  const rows = WATER_ACTIVITY_LIMITS.filter((limit) => limit.group === group);
  return {
    id,
    title,
    notes,
    sources: [...new Set(rows.map(({ source }) => source))],
    columns: [column('What'), numberColumn(head)],
    rows: rows.map((limit) => ({
      id: `${id}-${limit.id}`,
      cells: [named(LIMIT_NAMES, limit.id), value(limit)],
      mark: limit.mark,
      words: ['aw', 'water activity'],
    })),
  };
};

const HURDLES: readonly { figure: FigureId; name: string }[] = [
  { figure: 'vac-short-life', name: 'With none of the hurdles below: life in the pack' },
  { figure: 'vac-hurdle-temp', name: 'Heat at the coldest point, held as in the next row' },
  { figure: 'vac-hurdle-time', name: 'Hold at that heat' },
  { figure: 'vac-hurdle-salt', name: 'Or salt in the water, throughout' },
  { figure: 'vac-hurdle-aw', name: 'Or water activity, throughout' },
  { figure: 'vac-hurdle-ph', name: 'Or pH, throughout' },
];

const ratio = ({ maxRatio, maxPh }: RatioClass) => [
  `${plainText(maxRatio)} : 1`,
  maxPh === null ? '–' : plainText(maxPh),
];

function degreeHourPart({ id, unit, threshold, bands, source, mark }: DegreeHourTable): TablePart {
  const degrees = (temp: number) =>
    unit === 'C'
      ? plainCell(temp)
      : {
          celsius: plainCell(((temp - 32) * 5) / 9).celsius.replace(/\.\d+/, ''),
          fahrenheit: `${temp}\u00a0°F`,
        };
  const from = degrees(threshold);
  return {
    id: `degree-hours-${id}`,
    title: unit === 'F' ? 'Degree-hours to pH 5.3, United States' : 'Degree-hours to pH 5.3, Canada',
    notes: [
      `Degrees above ${unit === 'C' ? from.celsius : from.fahrenheit}, times hours, until the pH is 5.3. The hottest hour of the chamber picks the row. Only under an accepted plan.`,
    ],
    sources: [source],
    columns: [column('Hottest chamber'), numberColumn(`Most degree-hours, °${unit}`)],
    rows: bands.map(({ to, toIncluded, limit }, at) => ({
      id: `degree-hours-${id}-${at + 1}`,
      cells: [
        to === null ? 'hotter' : `${toIncluded ? 'up to' : 'below'} ${plainText(to)} °${unit}`,
        plainText(limit),
      ],
      mark,
    })),
  };
}

/** Water activity, what it stops, and other marks of a dry product. */
export const waterActivity: readonly TablePart[] = [
  limitPart(
    'growth',
    'growth',
    'Water activity below which they do not grow',
    ['With everything else as they like it. Below the figure they wait; they do not die.'],
    'No growth below',
  ),
  limitPart(
    'rule',
    'law',
    'What the law ties to a water activity',
    ['A measured figure of the finished product, not an estimate.'],
    'At most',
  ),
  limitPart(
    'usual',
    'usual',
    'Where products usually lie',
    ['For orientation. It proves nothing of yours.'],
    'Usual',
  ),
  {
    id: 'shelf-rules',
    title: 'What rules ask of pH and water activity',
    notes: ['A finished product that meets one is still under a plan of its own.'],
    sources: [...new Set(SHELF_RULES.map(({ source }) => source))],
    columns: [column('Rule'), numberColumn('pH'), numberColumn('Water activity')],
    rows: SHELF_RULES.map(({ id, rule, ph, waterActivity: aw, mark }) => ({
      id,
      cells: [rule, ph, aw],
      mark,
      words: ['shelf stable', 'aw'],
    })),
  },
  {
    id: 'chilled-pack',
    title: 'Chilled life in a pack without air, United Kingdom',
    notes: [
      'One hurdle, met throughout, allows a life beyond the short one. Have it proven for your product.',
    ],
    sources: ['uk-vp-map-guidance'],
    columns: [column('What'), column('Figure')],
    rows: HURDLES.map(({ figure, name }) => ({
      id: figure,
      cells: [name, figureCell(figure)],
      mark: FIGURES[figure].mark,
      words: ['vacuum pack shelf life', 'cold-growing botulinum'],
    })),
  },
  {
    id: 'salt-and-activity',
    title: 'Water activity from salt on the water',
    notes: [
      'Salt alone, at 25 °C, by two published forms. Plan by the higher. Sugar lowers the real one a little; only an instrument decides.',
    ],
    sources: ['pitzer-mayorga-1973', 'resnik-chirife-1988'],
    columns: [numberColumn('Salt on water, %'), numberColumn('First form'), numberColumn('Second form')],
    rows: WATER_ACTIVITY_TABLE.map(({ waterPhaseSaltPercent, pitzer, quadratic }) => ({
      id: `water-salt-${plainText(waterPhaseSaltPercent).replace('.', '-')}`,
      cells: [`${plainText(waterPhaseSaltPercent)} %`, fixedText(pitzer, 3), fixedText(quadratic, 3)],
      mark: 'derived' as const,
      words: ['water phase salt'],
    })),
  },
  {
    id: 'ratios',
    title: 'Moisture to protein, by name',
    notes: ['It tells how dry a product of that name must be. It is no proof of safety.'],
    sources: [...new Set(RATIO_CLASSES.map(({ source }) => source))],
    columns: [column('Name'), numberColumn('Moisture to protein, at most'), numberColumn('pH, at most')],
    rows: RATIO_CLASSES.map((of) => ({
      id: `ratio-${of.id}`,
      cells: [named(CLASS_NAMES, of.id), ...ratio(of)],
      mark: of.mark,
      words: ['MPR', 'moisture protein ratio'],
    })),
  },
  ...DEGREE_HOUR_TABLES.map(degreeHourPart),
];
