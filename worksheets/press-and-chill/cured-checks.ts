import { type CoolValues, type CuredWay, MOST_LIVER_FRACTION } from '@larderwright/calc/cooling';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/press-and-chill/cured-checks.ts';

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
    side: 'least' | 'most',
  ) => {
    if (limit === undefined) return;
    const met = has === null ? null : side === 'least' ? has >= limit : has <= limit;
    checks.push({
      way: number,
      what,
      asked: side === 'least' ? say.atLeast(show(limit)) : say.atMost(show(limit)),
      has: has === null ? null : show(has),
      met,
    });
  };
  add(say.nitritePutIn, way.nitritePpm, facts.nitritePpm, ppm, 'least');
  add(say.saltOnWaterPhase, way.saltOnWaterFraction, facts.saltOnWaterFraction, percent('down'), 'least');
  add(say.ascorbateOrErythorbate, way.acceleratorPpm, facts.acceleratorPpm, ppm, 'least');
  add(say.waterActivity, way.waterActivityMax, facts.waterActivity, (aw) => fixedText(aw, 3, 'up'), 'most');
  if (way.nitritePpm !== undefined)
    add(say.liverOfEverything, MOST_LIVER_FRACTION, facts.liverFraction, percent('up'), 'most');
  return checks;
}

/** Every condition of a rule for cured products. Empty for a rule that asks for no cure. */
export function curedChecks({ ruleSet, facts }: CoolValues): CuredCheck[] {
  return (ruleSet?.cured ?? []).flatMap((way, i) => checksOf(way, i + 1, facts));
}
