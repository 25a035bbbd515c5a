import {
  CASING_MARK,
  CASING_SOURCE,
  CASINGS,
  type Casing,
  casingForG,
  massPerMetreG,
} from '@larderwright/calc/casings';
import { fixedText, plainText } from '@larderwright/calc/quantities';
import { cellText, column, numberColumn, plainCell, type TablePart } from '../../lib/table-model.ts';

/** What a sausage mix weighs when the kilograms of a metre are shown, g/mL. Common practice. */
const SHOWN_DENSITY = 1.03;

const span = (range: readonly [number, number] | null) => {
  if (range === null) return '–';
  return range[0] === range[1] ? plainText(range[0]) : `${plainText(range[0])}–${plainText(range[1])}`;
};

function soak({ soakMin, soakC }: Casing): string {
  if (soakMin === null) return '–';
  const water = soakC === null ? '' : ` at ${cellText(plainCell(soakC[0] === soakC[1] ? soakC[0] : soakC))}`;
  return `${span(soakMin)} min${water}`;
}

function row(casing: Casing): TablePart['rows'][number] {
  const perMetreG = massPerMetreG(casing.usualMm, SHOWN_DENSITY);
  const metres = perMetreG === null ? null : casingForG(1000, perMetreG, 0);
  return {
    id: casing.id,
    cells: [
      casing.name,
      span(casing.stuffedMm),
      perMetreG === null ? '–' : fixedText(perMetreG / 1000, 2),
      metres === null ? '–' : fixedText(metres.filledM, 2, 'up'),
      span(casing.linkMm),
      span(casing.linkG),
      soak(casing),
    ],
    mark: CASING_MARK,
    words: ['sausage skin', 'casing', casing.species ?? casing.material],
  };
}

/** Casings with what they stuff to, and what goes into a metre. */
export const casings: readonly TablePart[] = [
  {
    id: 'casing-sizes',
    title: 'Casings by what they stuff to',
    notes: [
      `The kilograms of a metre are worked out for the usual width, firm, with ${plainText(SHOWN_DENSITY)} g in each millilitre. Add spare for breaks and ends.`,
    ],
    sources: [CASING_SOURCE],
    columns: [
      column('Casing'),
      numberColumn('Stuffed, mm'),
      numberColumn('kg in a metre'),
      numberColumn('m for a kg'),
      numberColumn('Link, mm'),
      numberColumn('Link, g'),
      column('Soak'),
    ],
    rows: CASINGS.map(row),
  },
];
