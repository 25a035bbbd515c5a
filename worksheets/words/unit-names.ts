import { type Unit, unitLabel } from '@larderwright/calc/quantities';

const COUNT_NAME = 'pieces';

/** How a unit is named in a pick list or behind a field. */
export function unitName(unit: Unit): string {
  return unitLabel(unit) || COUNT_NAME;
}
