import { fixedText } from '@larderwright/calc/quantities';

/** Places a price is shown with unless the plan says otherwise. */
const USUAL_DECIMALS = 2;
const NO_BREAK_SPACE = '\u00A0';

/**
 * Money as printed: rounded to the smallest coin as digits are rounded on paper, a half away from zero. Rounding is
 * for show: nothing is computed from it.
 * @param label the kitchen's own name of its currency; '' for none
 */
export function moneyText(value: number, label = '', decimals = USUAL_DECIMALS): string {
  const text = fixedText(value, decimals);
  return label === '' || text === '' ? text : `${text}${NO_BREAK_SPACE}${label}`;
}
