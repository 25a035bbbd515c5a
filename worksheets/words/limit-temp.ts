import {
  formatLimitTemp,
  type LimitSide,
  type LimitTemp,
  type LimitTempText,
} from '@larderwright/calc/quantities';
import { keptSetting } from '../state/kept-setting.ts';

/** A limit on both scales as calc writes it: `145 °F (63 °C)`, with no-break spaces. */
const BOTH = /(\S+)\u00A0°([CF]) \((\S+)\u00A0°([CF])\)/g;

let first: unknown;

/** Which scale this device writes first; undefined where each rule's own comes first. Asked for once a page. */
function scaleFirst(): unknown {
  first ??= keptSetting('tempFirst') ?? 'rule';
  return first;
}

/** A text with the scale the person wants first in front, wherever a limit stands in it on both. */
export function inOrder(text: string, wanted: unknown = scaleFirst()): string {
  if (wanted !== 'C' && wanted !== 'F') return text;
  return text.replaceAll(BOTH, (whole, own: string, ownUnit: string, other: string, otherUnit: string) =>
    ownUnit === wanted || otherUnit !== wanted
      ? whole
      : `${other}\u00A0°${otherUnit} (${own}\u00A0°${ownUnit})`,
  );
}

/** A limit for the screen and for paper: both scales, rounded by calc, in the order of this device. */
export function limitTemp(limit: LimitTemp, side: LimitSide): LimitTempText {
  const shown = formatLimitTemp(limit, side);
  return { ...shown, text: inOrder(shown.text) };
}
