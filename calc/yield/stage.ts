import type { Finding, MissingInput, StageResult } from '../findings/index.ts';
import { entryValue } from '../quantities/index.ts';
import type { YieldFindingId } from './finding-ids.ts';
import { yieldFindings } from './findings.ts';
import { pricePerKg } from './mass-price.ts';
import { purchaseG } from './purchase.ts';
import type { YieldSlice, YieldTest } from './slice.ts';
import { spreadOf } from './spread.ts';
import { trimYield } from './trim-yield.ts';
import type { TrialResult, YieldTestResult, YieldValues } from './values.ts';

/**
 * Trim and yield tests: what each trial left, the mean and spread of several, cost of the usable kilogram, and what
 * to buy for a trimmed mass. Nothing here is a safety verdict.
 */
export function yieldStage(slice: YieldSlice): StageResult<YieldValues, YieldFindingId> {
  const findings: Finding<YieldFindingId>[] = [];
  const missing: MissingInput[] = [];
  const tests = slice.tests.map((test) => {
    const result = testResult(test);
    findings.push(...yieldFindings(test, result));
    missing.push(...testMissing(test, result));
    return result;
  });
  return { values: { tests }, findings, verdicts: [], missing };
}

function testResult(test: YieldTest): YieldTestResult {
  const price = entryValue('money', test.price);
  const perKg = price === null ? null : pricePerKg(price, test.priceBasis);
  const trials = test.trials.map((trial): TrialResult => {
    const purchasedG = entryValue('mass', trial.purchased);
    const parts = test.parts.map(({ id, role, value }) => {
      const entry = trial.parts[id];
      const worth = entryValue('money', value);
      return {
        role,
        massG: entry ? entryValue('mass', entry) : null,
        valuePerKg: worth === null ? null : pricePerKg(worth, test.priceBasis),
      };
    });
    return { trialId: trial.id, purchasedG, ...trimYield(purchasedG, perKg, parts) };
  });
  const spread = (pick: (trial: TrialResult) => number | null | undefined) =>
    spreadOf(trials.flatMap((trial) => pick(trial) ?? []));
  const usable = spread(({ usableFraction }) => usableFraction);
  const neededG = entryValue('mass', test.needed);
  const buy = (yieldFraction: number | undefined) =>
    neededG === null || yieldFraction === undefined ? null : purchaseG(neededG, yieldFraction);
  return {
    testId: test.id,
    perKg,
    trials,
    usable,
    parts: test.parts.map(({ id }, index) => ({
      partId: id,
      spread: spread(({ partFractions }) => partFractions[index]),
    })),
    unaccounted: spread(({ unaccountedFraction }) => unaccountedFraction),
    costPerUsableKg: spread(({ costPerUsableKg }) => costPerUsableKg),
    costFactor: spread(({ costFactor }) => costFactor),
    neededG,
    purchaseG: buy(usable?.mean),
    purchaseAtLowestG: buy(usable?.min),
  };
}

/** A trial nobody has begun lacks nothing; a begun one wants every pile. */
function testMissing(test: YieldTest, { perKg }: YieldTestResult): MissingInput[] {
  const path = `yield.tests.${test.id}`;
  const missing: MissingInput[] = [];
  const begun = test.trials.filter(
    ({ purchased, parts }) =>
      purchased.text.trim() !== '' || Object.values(parts).some(({ text }) => text.trim() !== ''),
  );
  for (const trial of begun) {
    const bought = entryValue('mass', trial.purchased);
    if (bought === null || bought === 0)
      missing.push({ field: `${path}.trials.${trial.id}.purchased`, neededFor: 'yield.usable' });
    for (const { id, role } of test.parts) {
      const entry = trial.parts[id];
      if (entry && entryValue('mass', entry) !== null) continue;
      missing.push({
        field: `${path}.trials.${trial.id}.parts.${id}`,
        neededFor: role === 'usable' ? 'yield.usable' : 'yield.unaccounted',
      });
    }
  }
  if (begun.length === 0) return missing;
  if (perKg === null) missing.push({ field: `${path}.price`, neededFor: 'yield.cost' });
  for (const part of test.parts.filter(({ role }) => role === 'by-product')) {
    const none = begun.every(({ parts }) => {
      const entry = parts[part.id];
      return entry !== undefined && entryValue('mass', entry) === 0;
    });
    if (!none && entryValue('money', part.value) === null)
      missing.push({ field: `${path}.parts.${part.id}.value`, neededFor: 'yield.cost' });
  }
  return missing;
}
