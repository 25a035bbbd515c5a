import type { CoolCondition, CoolLeg, CoolRuleSet, CuredWay } from '@larderwright/calc/cooling';
import { formatLimitTemp } from '@larderwright/calc/quantities';

/** What must also be true for a cooling rule to count, as it stands under its table. */
const COOL_CONDITION_WORDS: Readonly<Record<CoolCondition, string>> = {
  continuous: 'The core keeps falling from the first temperature to the last.',
  'on-to-40F': 'After the second leg the chill goes on to 40 °F (4 °C).',
  'cold-store': 'The product then goes into a cold store at once.',
  'under-5kg': 'For pieces under 5 kg.',
  'large-pieces': 'Written for large pieces. A smaller one that needs as long is cooling too slowly.',
  'check-province': 'Provinces print codes of their own. Check yours.',
};

/** Whole hours and minutes: `6 h`, `1 h 30 min`. */
function hoursAndMinutes(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = Math.round(minutes - hours * 60);
  return [hours > 0 && `${hours} h`, rest > 0 && `${rest} min`].filter(Boolean).join(' ');
}

/**
 * A leg in words. Where a figure is converted, the start rounds up and the end rounds down: both ask for more.
 */
export function legWords(leg: CoolLeg): { from: string; to: string; most: string; good: string } {
  const scales = (text: { celsius: string; fahrenheit: string }) => `${text.celsius} (${text.fahrenheit})`;
  return {
    from: leg.from ? scales(formatLimitTemp(leg.from, 'minimum')) : 'end of the cook',
    to: scales(formatLimitTemp(leg.to, 'maximum')),
    most: `${leg.strict ? 'less than ' : ''}${hoursAndMinutes(leg.maxMin)}`,
    good: leg.goodMin === undefined ? '' : hoursAndMinutes(leg.goodMin),
  };
}

/** One way to count as cured, in words. */
function curedWords(way: CuredWay): string {
  const { nitritePpm, saltOnWaterFraction, acceleratorPpm, waterActivityMax } = way;
  const percent = (fraction: number) => `${Number((fraction * 100).toFixed(2))} %`;
  return [
    nitritePpm !== undefined && `${nitritePpm} mg/kg nitrite or more put in`,
    saltOnWaterFraction !== undefined && `${percent(saltOnWaterFraction)} salt or more in the water`,
    acceleratorPpm !== undefined && `${acceleratorPpm} mg/kg ascorbate or erythorbate or more`,
    waterActivityMax !== undefined && `a water activity of ${waterActivityMax} or less`,
  ]
    .filter(Boolean)
    .join(' and ');
}

/** Everything a rule set asks besides its legs, one sentence each. */
export function coolConditions(set: CoolRuleSet): string[] {
  return [
    ...(set.cured
      ? [`Only for cured products: ${set.cured.map(curedWords).join('; or ')}, right to the core.`]
      : []),
    ...(set.chillStartMaxMin === undefined
      ? []
      : [`Chilling begins within ${hoursAndMinutes(set.chillStartMaxMin)} of the end of the cook.`]),
    ...(set.mustFall ? ['The core may not rise on the way.'] : []),
    ...set.conditions.map((condition) => COOL_CONDITION_WORDS[condition]),
  ];
}
