import { type Unit, unitLabel } from '@larderwright/calc/quantities';

const COUNT_NAME = 'pieces';
/** Where no label of the kitchen's currency is at hand. */
const MONEY_NAME = 'money';

/** How a unit is named in a pick list or behind a field. */
export function unitName(unit: Unit): string {
  if (unit === 'money') return MONEY_NAME;
  if (unit === 'ratio') return 'to 1';
  return unitLabel(unit) || COUNT_NAME;
}
