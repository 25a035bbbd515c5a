import type { Finding, Params, Severity } from '../findings/index.ts';
import { entryValue } from '../quantities/index.ts';
import type { YieldFindingId } from './finding-ids.ts';
import type { YieldTest } from './slice.ts';
import type { YieldTestResult } from './values.ts';

/** Share of the purchase that may go missing before the weighing is doubted. Common practice, no source. */
export const UNACCOUNTED_LIMIT = 0.02;
/** The noise of adding decimal weights. */
const NOISE = 1e-9;

type YieldFinding = Finding<YieldFindingId>;

/** What is worth telling about one test. */
export function yieldFindings(test: YieldTest, result: YieldTestResult): YieldFinding[] {
  const found: YieldFinding[] = [];
  const path = `yield.tests.${test.id}`;
  const tell = (id: YieldFindingId, severity: Severity, field: string, params: Params) =>
    found.push({
      id,
      severity,
      stage: 'yield',
      field: `${path}.${field}`,
      params: { name: test.name, ...params },
    });

  for (const [index, trial] of result.trials.entries()) {
    const { unaccountedFraction: open, unaccountedG: openG, trialId } = trial;
    if (open === null || openG === null) continue;
    const params = { trial: index + 1, unaccountedFraction: Math.abs(open), unaccountedG: Math.abs(openG) };
    const field = `trials.${trialId}.purchased`;
    if (open < -NOISE) tell('yield.more-than-bought', 'caution', field, params);
    else if (open > UNACCOUNTED_LIMIT + NOISE)
      tell('yield.unaccounted', 'caution', field, { ...params, limitFraction: UNACCOUNTED_LIMIT });
  }
  for (const [index, { creditMoney, costPerUsableKg, trialId }] of result.trials.entries()) {
    if (creditMoney !== null && costPerUsableKg !== null && costPerUsableKg < 0)
      tell('yield.credit-over-cost', 'caution', `trials.${trialId}.purchased`, {
        trial: index + 1,
        creditMoney,
      });
  }
  const { usable } = result;
  if (usable?.count === 1) tell('yield.one-trial', 'note', 'trials', {});
  const low = entryValue('fraction', test.usualLow);
  const high = entryValue('fraction', test.usualHigh);
  if (low !== null && high !== null && low > high) {
    tell('yield.usual-reversed', 'caution', 'usualLow', { lowFraction: low, highFraction: high });
  } else if (usable && (usable.mean < (low ?? 0) - NOISE || usable.mean > (high ?? 1) + NOISE)) {
    tell('yield.outside-usual', 'note', 'trials', {
      yieldFraction: usable.mean,
      lowFraction: low ?? 0,
      highFraction: high ?? 1,
    });
  }
  return found;
}
