import { plainText, roundTo } from '@larderwright/calc/quantities';
import {
  BLEND_STYLES,
  type BlendStyle,
  type Dose,
  SPICE_MARK,
  SPICE_SOURCE,
  SPICES,
  type Spice,
  type SpiceForm,
  spiceOf,
} from '@larderwright/calc/seasoning';
import { column, numberColumn, type TablePart, type TableRow } from '../../lib/table-model.ts';

const FORM_NAMES: Readonly<Record<SpiceForm, string>> = {
  ground: 'ground',
  whole: 'whole',
  dried: 'dried',
  fresh: 'fresh',
  cooked: 'cooked',
  plain: '',
};

const percent = (fraction: number) => plainText(roundTo(fraction * 100, 1));

function remark({ strong, euAllergens, saltFraction }: Spice): string {
  return [
    euAllergens.length > 0 && `allergen: ${euAllergens.map(({ name }) => name).join(', ')}`,
    saltFraction && `brings ${percent(saltFraction.min)}–${percent(saltFraction.max)} % salt`,
    strong && 'strong: taste a large batch, do not multiply',
  ]
    .filter(Boolean)
    .join('; ');
}

function spiceRows(spice: Spice): TableRow[] {
  return (Object.entries(spice.doses) as [SpiceForm, Dose][]).map(([form, dose]) => ({
    id: `${spice.id}-${form}`,
    cells: [
      [spice.name, FORM_NAMES[form]].filter((part) => part !== '').join(', '),
      plainText(dose.lowGPerKg),
      plainText(dose.typicalGPerKg),
      plainText(dose.ceilingGPerKg),
      remark(spice) || '–',
    ],
    mark: SPICE_MARK,
    words: ['spice dose', 'how much'],
  }));
}

function blendRow({ id, name, parts, doseGPerUnit: { min, max }, unit, use, mark }: BlendStyle): TableRow {
  const list = parts.map((part) => `${spiceOf(part.spiceId)?.name ?? part.spiceId} ${plainText(part.parts)}`);
  return {
    id: `blend-${id}`,
    cells: [name, list.join(', '), `${plainText(min)}–${plainText(max)} ${unit}`, use],
    mark,
    words: ['spice blend'],
  };
}

/** All in one table would not go on one card. */
const FIRST_HERB = SPICES.findIndex(({ id }) => id === 'thyme');

function doses(id: string, title: string, spices: readonly Spice[]): TablePart {
  return {
    id,
    title,
    notes: [
      'For food eaten cold. A ceiling is one of taste: above it the spice spoils the food. Liver and game bear the upper half, fish and white meat the lower.',
    ],
    sources: [SPICE_SOURCE],
    columns: [
      column('Spice'),
      numberColumn('Background'),
      numberColumn('Usual'),
      numberColumn('Ceiling'),
      column('Mind'),
    ],
    rows: spices.flatMap(spiceRows),
  };
}

/** Doses of spices and herbs, and blends by parts. */
export const seasoning: readonly TablePart[] = [
  doses('doses', 'Spices, g in a kilogram of the whole mix', SPICES.slice(0, FIRST_HERB)),
  doses(
    'herb-doses',
    'Herbs, garlic, mustard, paprika and the rest, g in a kilogram of the whole mix',
    SPICES.slice(FIRST_HERB),
  ),
  {
    id: 'blends',
    title: 'Blends by parts',
    notes: ['Proportions invented for teaching. Check each spice against its own ceiling after you dose.'],
    sources: [SPICE_SOURCE],
    columns: [column('Blend'), column('Parts'), column('Dose'), column('For')],
    rows: BLEND_STYLES.map(blendRow),
  },
];
