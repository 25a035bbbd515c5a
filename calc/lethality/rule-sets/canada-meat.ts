import type { CookRuleSet } from '../limit.ts';
import { FSIS_MEAT_ROWS, printedSeconds } from './fsis-meat.ts';

/** Ready-to-eat meat without poultry. Both scales as the Canadian table prints them. */
export const CANADA_MEAT: CookRuleSet = {
  id: 'ca-meat',
  title: 'Meat without poultry, 6.5-log Salmonella (Table 1)',
  jurisdiction: 'Canada, federal plants',
  edition: 'undated',
  reviewed: '2026-11-25',
  sources: ['cfia-rte', 'fsis-cooking-meat'],
  mark: 'confirmed',
  conditions: ['come-up', 'salmonella-only'],
  limits: FSIS_MEAT_ROWS.map(([tempF, printedC, printed]) => ({
    id: `ca-${printedC.toFixed(1)}C`,
    stated: { value: printedC, unit: 'C', published: tempF },
    hold: { s: printedSeconds(printed), printed },
    serves: 'no-poultry',
    form: 'any',
    source: 'cfia-rte',
    // The Canadian reprint read leaves the row of 146 °F out.
    mark: tempF === 146 ? 'derived' : 'confirmed',
  })),
};
