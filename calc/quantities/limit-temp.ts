import { convert } from './convert.ts';
import { fixedText, plainText, type Rounding } from './round.ts';

/** A limit as its rule states it. */
export interface LimitTemp {
  readonly value: number;
  readonly unit: 'C' | 'F';
  /** The other scale's figure where the rule itself publishes one (155 °F / 68 °C). */
  readonly published?: number;
}

/** A cook minimum must be reached, a cool maximum must not be passed. */
export type LimitSide = 'minimum' | 'maximum';

export interface LimitTempText {
  /** Whole degrees where converted; as stated where the rule states it. */
  readonly celsius: string;
  readonly fahrenheit: string;
  /** Both, the rule's own scale first: `145 °F (63 °C)`. */
  readonly text: string;
}

const NO_BREAK_SPACE = '\u00A0';

/**
 * Show a temperature limit on both scales, never rounded toward danger: a cook minimum rounds up, a cool maximum
 * rounds down, and a pair that the rule publishes itself is shown as published. For show only: verdicts use the
 * exact figure in the rule's own unit.
 * @example formatLimitTemp({ value: 145, unit: 'F' }, 'minimum').text // '145 °F (63 °C)'
 */
export function formatLimitTemp(limit: LimitTemp, side: LimitSide): LimitTempText {
  const rounding: Rounding = side === 'minimum' ? 'up' : 'down';
  const other = limit.unit === 'C' ? 'F' : 'C';
  const own = `${plainText(limit.value)}${NO_BREAK_SPACE}°${limit.unit}`;
  const figure =
    limit.published === undefined
      ? fixedText(convert(limit.value, limit.unit, other), 0, rounding)
      : plainText(limit.published);
  const shown = `${figure}${NO_BREAK_SPACE}°${other}`;
  const [celsius, fahrenheit] = limit.unit === 'C' ? [own, shown] : [shown, own];
  return { celsius, fahrenheit, text: `${own} (${shown})` };
}
