import type { CookLimit, CookRuleSet, FatColumn } from '../limit.ts';
import { printedSeconds } from './fsis-meat.ts';
import {
  CHICKEN_FAT_PERCENT,
  CHICKEN_GRID,
  POULTRY_12_PERCENT,
  POULTRY_LEAN_POINTS,
} from './poultry-tables.ts';

function column(maxFatPercent: number, printed: string): FatColumn {
  return { maxFatPercent, s: printedSeconds(printed), printed };
}

/**
 * Columns of one bird at one temperature, leanest first. A column that asks for less time than a leaner one is left
 * out: more fat never needs less (turkey at 150 °F prints 3.7 min for 5 % and 3.8 min for 1 %).
 */
function columnsAt(bird: 'chicken' | 'turkey', tempF: number): FatColumn[] {
  const grid = CHICKEN_GRID.find(([rowF]) => rowF === tempF)?.[2];
  const whole = POULTRY_12_PERCENT.find(([rowF]) => rowF === tempF);
  const points = POULTRY_LEAN_POINTS.filter(([name, , rowF]) => name === bird && rowF === tempF);
  const lean = points.map(([, fat, , printed]) => column(fat, printed));
  const fromGrid =
    grid && bird === 'chicken'
      ? CHICKEN_FAT_PERCENT.map((fat, index) => column(fat, `${grid[index]} min`))
      : lean;
  const top = whole ? [column(12, bird === 'chicken' ? whole[2] : whole[3])] : [];
  const all = [...fromGrid.filter(({ maxFatPercent }) => maxFatPercent < 12), ...top];
  return all.filter((here, index) => all.slice(0, index).every((leaner) => leaner.s <= here.s));
}

function limits(prefix: string, scale: 'F' | 'C'): CookLimit[] {
  return POULTRY_12_PERCENT.map(([tempF, printedC]) => ({
    id: scale === 'F' ? `${prefix}-${tempF}F` : `${prefix}-${printedC.toFixed(1)}C`,
    stated: scale === 'F' ? { value: tempF, unit: 'F' } : { value: printedC, unit: 'C', published: tempF },
    printedC,
    hold: { turkey: columnsAt('turkey', tempF), otherBirds: columnsAt('chicken', tempF) },
    serves: 'poultry',
    form: 'any',
    source: scale === 'F' ? 'fsis-cooking-poultry' : 'cfia-rte',
    mark: 'confirmed',
  }));
}

/** Anything with poultry in it, 7-log Salmonella, by the fat of the product. No column above 12 % fat. */
export const FSIS_POULTRY: CookRuleSet = {
  id: 'us-fsis-poultry',
  title: 'Containing poultry, 7-log Salmonella, by fat',
  jurisdiction: 'United States, federal plants',
  edition: '2005; carried into Revised Appendix A, 2017 and 2021',
  reviewed: '2026-11-25',
  sources: ['fsis-cooking-poultry', 'fsis-cooking-conditions'],
  mark: 'confirmed',
  conditions: ['come-up', 'humidity', 'salmonella-only'],
  limits: limits('fsis-poultry', 'F'),
};

/** Canada reads duck, goose, guinea fowl, pheasant, partridge, pigeon, quail and ostrich as poultry other than turkey. */
export const CANADA_POULTRY: CookRuleSet = {
  id: 'ca-poultry',
  title: 'Containing poultry, 7-log Salmonella, by fat (Tables 2 and 3)',
  jurisdiction: 'Canada, federal plants',
  edition: 'undated',
  reviewed: '2026-11-25',
  sources: ['cfia-rte', 'fsis-cooking-poultry'],
  mark: 'confirmed',
  conditions: ['come-up', 'salmonella-only'],
  limits: limits('ca-poultry', 'C'),
};
