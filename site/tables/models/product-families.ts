import { type Band, FAMILIES, FAMILY_MARK, FAMILY_SOURCE, type Family } from '@larderwright/calc/formula';
import { plainText, roundTo } from '@larderwright/calc/quantities';
import { FAMILY_NAMES } from '../../../worksheets/words/family-names.ts';
import { column, numberColumn, type TablePart } from '../../lib/table-model.ts';

const LACKING = '–';
const names = new Map(FAMILY_NAMES.map(({ value, label }) => [value, label]));
const nameOf = ({ id, name }: Family) => names.get(id) ?? name;
const percent = (fraction: number) => plainText(roundTo(fraction * 100, 2));

function band(of: Band | null | undefined): string {
  if (!of) return LACKING;
  const range = of.min === of.max ? percent(of.min) : `${percent(of.min)}–${percent(of.max)}`;
  return of.usual === undefined ? range : `${range} (${percent(of.usual)})`;
}

const grams = (range: readonly [number, number] | null) =>
  range === null ? LACKING : `${plainText(range[0])}–${plainText(range[1])}`;

function nitrite({ nitrite: habit }: Family): string {
  if (!habit) return 'none';
  const range = `${habit.minPpm}–${habit.maxPpm}`;
  return `${habit.optional ? 'none, or ' : ''}${range}${habit.of === 'liver' ? ' on the liver' : ''}`;
}

const SALT_OF: Readonly<Record<Family['saltOf'], string>> = {
  total: 'the whole mix',
  'finished product': 'the finished product',
  meat: 'the meat',
  jelly: 'the jelly',
};

/** Habits of the product families. Quality only. */
export const productFamilies: readonly TablePart[] = [
  {
    id: 'structure',
    title: 'What goes in, % of the whole mix',
    notes: ['Working ranges of the trade. Food outside them may be good; none is a limit.'],
    sources: [FAMILY_SOURCE],
    columns: [
      column('Family'),
      ...['Lean', 'Fat', 'Liver', 'Panade', 'Egg', 'Liquid', 'Garnish', 'Fat by analysis'].map(numberColumn),
    ],
    rows: FAMILIES.map((family) => ({
      id: family.id,
      cells: [
        nameOf(family),
        ...(['lean', 'fat', 'liver', 'panade', 'egg', 'liquid', 'garnish'] as const).map((part) =>
          band(family.parts[part]),
        ),
        band(family.chemicalFat),
      ],
      mark: FAMILY_MARK,
    })),
  },
  {
    id: 'seasoning',
    title: 'Salt, cure and seasoning',
    notes: [
      'The usual figure stands in brackets. Nitrite is a habit of taste and colour here; the limits stand in their own table.',
    ],
    sources: [FAMILY_SOURCE],
    columns: [
      column('Family'),
      numberColumn('Salt, %'),
      column('Of'),
      numberColumn('Nitrite, mg/kg'),
      numberColumn('Sugar, %'),
      numberColumn('Pepper, g/kg'),
      numberColumn('Spice, g/kg'),
      numberColumn('Spirit, %'),
    ],
    rows: FAMILIES.map((family) => ({
      id: `${family.id}-seasoning`,
      cells: [
        nameOf(family),
        band(family.salt),
        SALT_OF[family.saltOf],
        nitrite(family),
        band(family.sugar),
        grams(family.pepperGPerKg),
        grams(family.spiceGPerKg),
        band(family.spirit),
      ],
      mark: FAMILY_MARK,
    })),
  },
  {
    id: 'remarks',
    title: 'How each family is made',
    notes: [],
    sources: [FAMILY_SOURCE],
    columns: [column('Family'), column('Remark')],
    rows: FAMILIES.filter(({ remark }) => remark !== '').map((family) => ({
      id: `${family.id}-remark`,
      cells: [nameOf(family), family.remark],
      mark: FAMILY_MARK,
    })),
  },
  namedShares(),
];

/** Shares a law ties to a name, each once. */
function namedShares(): TablePart {
  const shares = FAMILIES.flatMap(({ id, named }) => named.map((share) => ({ id, share })));
  const once = shares.filter(({ share }, at) => shares.findIndex((other) => other.share === share) === at);
  const bound = (share: (typeof once)[number]['share']) =>
    [
      share.min !== undefined && `at least ${percent(share.min)}`,
      share.max !== undefined && `at most ${percent(share.max)}`,
    ]
      .filter(Boolean)
      .join(', ');
  return {
    id: 'names',
    title: 'Shares the law ties to a name',
    notes: ['For the name on the label. They say nothing of safety.'],
    sources: [...new Set(once.map(({ share }) => share.source))],
    columns: [column('Name'), column('Of what'), numberColumn('%')],
    rows: once.map(({ id, share }, at) => ({
      id: `name-${id}-${at + 1}`,
      cells: [share.name, share.what, bound(share)],
      mark: share.mark,
    })),
  };
}
