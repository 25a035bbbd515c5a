import { type CoolValues, type CuredWay, MOST_LIVER_FRACTION } from '@larderwright/calc/cooling';
import { fixedText } from '@larderwright/calc/quantities';

/** One condition a rule for cured products asks for, and whether the batch meets it. */
export interface CuredCheck {
  /** Which of several ways it belongs to, from 1. */
  readonly way: number;
  readonly what: string;
  readonly asked: string;
  /** What the batch has, never rounded toward meeting it; null when not known. */
  readonly has: string | null;
  readonly met: boolean | null;
}

const ppm = (value: number) => `${fixedText(value, 1, 'down')} mg/kg`;
const percent = (rounding: 'up' | 'down') => (fraction: number) =>
  `${fixedText(fraction * 100, 2, rounding)} %`;

function checksOf(way: CuredWay, number: number, facts: CoolValues['facts']): CuredCheck[] {
  const checks: CuredCheck[] = [];
  const add = (
    what: string,
    limit: number | undefined,
    has: number | null,
    show: (value: number) => string,
    side: 'at least' | 'at most',
  ) => {
    if (limit === undefined) return;
    const met = has === null ? null : side === 'at least' ? has >= limit : has <= limit;
    checks.push({
      way: number,
      what,
      asked: `${side} ${show(limit)}`,
      has: has === null ? null : show(has),
      met,
    });
  };
  add('Nitrite put in, on everything', way.nitritePpm, facts.nitritePpm, ppm, 'at least');
  add('Salt on water phase', way.saltOnWaterFraction, facts.saltOnWaterFraction, percent('down'), 'at least');
  add('Ascorbate or erythorbate, on everything', way.acceleratorPpm, facts.acceleratorPpm, ppm, 'at least');
  add('Water activity', way.waterActivityMax, facts.waterActivity, (aw) => fixedText(aw, 3, 'up'), 'at most');
  if (way.nitritePpm !== undefined)
    add('Liver, of everything', MOST_LIVER_FRACTION, facts.liverFraction, percent('up'), 'at most');
  return checks;
}

/** Every condition of a rule for cured products. Empty for a rule that asks for no cure. */
export function curedChecks({ ruleSet, facts }: CoolValues): CuredCheck[] {
  return (ruleSet?.cured ?? []).flatMap((way, i) => checksOf(way, i + 1, facts));
}
