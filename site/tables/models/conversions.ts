import {
  nitrateIonFromSodiumNitrate,
  nitriteIonFromSodiumNitrite,
  sodiumNitriteFromNitriteIon,
  sodiumNitriteFromPotassiumNitrite,
} from '@larderwright/calc/cure';
import {
  BASE_UNITS,
  convert,
  fixedText,
  plainText,
  type QuantityKind,
  roundTo,
  type Unit,
  unitLabel,
  unitsOf,
} from '@larderwright/calc/quantities';
import { column, type TablePart, type TableRow } from '../../lib/table-model.ts';

const SIGNIFICANT = 6;
const NO_BREAK = '\u00a0';

const KINDS: readonly { kind: QuantityKind; id: string; title: string; note: string }[] = [
  {
    kind: 'mass',
    id: 'mass',
    title: 'Mass',
    note: 'Curing salt is weighed in grams, always, and never converted.',
  },
  { kind: 'length', id: 'length', title: 'Length', note: 'An inch is exact by definition.' },
  {
    kind: 'volume',
    id: 'volume',
    title: 'Volume',
    note: 'Cups and spoons are left out: they hold what they hold.',
  },
  { kind: 'pressure', id: 'pressure', title: 'Pressure', note: 'For press boards and weather.' },
];

const C_SHOWN = [
  -29, -23, -18, -15, -10, -5, -2, 0, 2, 3, 4, 5, 7, 8, 10, 12, 15, 20, 21, 25, 30, 40, 50, 54, 57, 60, 63,
  65, 68, 70, 71, 72, 74, 75, 78, 80, 82, 85, 90, 95, 100, 110, 130, 160, 175, 200, 220,
];
const F_SHOWN = [
  -20, -10, 0, 5, 28, 32, 35, 38, 40, 41, 45, 50, 55, 60, 70, 80, 100, 120, 130, 135, 140, 145, 150, 155, 158,
  160, 165, 170, 180, 190, 200, 212, 250, 275, 300, 325, 350, 375, 400, 425,
];

function amount(value: number, unit: Unit): string {
  const decimals = Math.max(0, SIGNIFICANT - 1 - Math.floor(Math.log10(Math.abs(value))));
  return `${plainText(roundTo(value, decimals))}${NO_BREAK}${unitLabel(unit)}`;
}

function kindPart({ kind, id, title, note }: (typeof KINDS)[number]): TablePart {
  const base = BASE_UNITS[kind];
  return {
    id,
    title,
    notes: [note],
    sources: ['nist-sp-811'],
    columns: [column('One'), column('Is'), column('And the other way')],
    rows: unitsOf(kind)
      .filter((unit) => unit !== base)
      .map((unit) => ({
        id: `${id}-${unit.toLowerCase()}`,
        cells: [
          `1${NO_BREAK}${unitLabel(unit)}`,
          amount(convert(1, unit, base), base),
          `1${NO_BREAK}${unitLabel(base)} = ${amount(convert(1, base, unit), unit)}`,
        ],
        mark: 'derived' as const,
        words: ['convert', 'conversion'],
      })),
  };
}

function scalePart(from: 'C' | 'F', to: 'C' | 'F', shown: readonly number[]): TablePart {
  const row = (value: number): TableRow => ({
    id: `${from.toLowerCase()}-${String(value).replace('-', 'minus-')}`,
    cells: [
      `${plainText(value)}${NO_BREAK}°${from}`,
      `${fixedText(convert(value, from, to), 1)}${NO_BREAK}°${to}`,
    ],
    mark: 'derived',
    words: [`${value}${from}`, `${value} degrees`],
  });
  return {
    id: `${from.toLowerCase()}-to-${to.toLowerCase()}`,
    title: `°${from} to °${to}`,
    notes: ['To a tenth of a degree. A limit is rounded to its safe side in its own table, not here.'],
    sources: ['nist-sp-811'],
    columns: [column('This'), column('Is')],
    rows: shown.map(row),
  };
}

const nitriteRow = (id: string, from: string, to: string, factor: number): TableRow => ({
  id,
  cells: [from, to, `× ${fixedText(factor, 4)}`],
  mark: 'derived',
  words: ['nitrite ion', 'convert nitrite'],
});

/** Units, exact where they are exact. */
export const conversions: readonly TablePart[] = [
  scalePart('F', 'C', F_SHOWN),
  scalePart('C', 'F', C_SHOWN),
  ...KINDS.map(kindPart),
  {
    id: 'nitrite-forms',
    title: 'Forms of nitrite and nitrate',
    notes: ['One amount weighs differently as salt and as ion. Bring both to one form before you compare.'],
    sources: ['standard-atomic-weights'],
    columns: [column('From'), column('To'), column('Times')],
    rows: [
      nitriteRow('nitrite-to-ion', 'Sodium nitrite', 'Nitrite ion', nitriteIonFromSodiumNitrite(1)),
      nitriteRow('ion-to-nitrite', 'Nitrite ion', 'Sodium nitrite', sodiumNitriteFromNitriteIon(1)),
      nitriteRow(
        'potassium-to-sodium',
        'Potassium nitrite',
        'Sodium nitrite',
        sodiumNitriteFromPotassiumNitrite(1),
      ),
      nitriteRow('nitrate-to-ion', 'Sodium nitrate', 'Nitrate ion', nitrateIonFromSodiumNitrate(1)),
    ],
  },
];
