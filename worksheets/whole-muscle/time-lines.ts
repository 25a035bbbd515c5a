import type { CureTime } from '@larderwright/calc/dry-cure';
import { fixedText } from '@larderwright/calc/quantities';
import { CURING_TIME_NAMES } from '../words/curing-time-names.ts';

/** Days by every rule and by diffusion, for paper. Guidance only: the longest counts. */
export function timeLines({ rules, diffusionDays }: CureTime): string[] {
  return [
    ...rules.map(
      ({ ruleId, days, inRange }) =>
        `${CURING_TIME_NAMES[ruleId]}: ${fixedText(days, 1, 'up')} days${inRange ? '' : ' (not made for this thickness)'}`,
    ),
    ...(diffusionDays === null
      ? []
      : [
          `Salt diffusing to 90 % in the middle: ${fixedText(diffusionDays.fast, 1, 'up')} to ${fixedText(diffusionDays.slow, 1, 'up')} days`,
        ]),
  ];
}
