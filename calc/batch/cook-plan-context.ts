import { brineStage } from '../brine/index.ts';
import type { CookPlanContext } from '../cook-plan/index.ts';
import { coolFactsOf } from '../cooling/index.ts';
import { cureStage } from '../cure/index.ts';
import { formulaStage } from '../formula/index.ts';
import type { CompositionTable } from '../ingredients/index.ts';
import { cookFacts } from '../lethality/index.ts';
import { isCrustBegun } from '../mould/index.ts';
import { entryValue } from '../quantities/index.ts';
import { plannedAltitude } from './altitude.ts';
import type { Batch } from './record.ts';

/** What the rest of a batch tells about its cook plan: moulds, mix, rules, and what the product is. */
export function cookPlanContext(batch: Batch, composition: CompositionTable): CookPlanContext {
  const finishedMassG = entryValue('mass', batch.product.finished);
  const formula = formulaStage(batch.formula, { composition });
  const cure = cureStage(batch, { composition, formulaResult: formula, finishedMassG });
  const brine = batch.brine ? brineStage({ cure: batch.cure, brine: batch.brine }, { finishedMassG }) : null;
  const { water, protein, fat, salt } = formula.values.mix;
  const altitude = plannedAltitude(batch);
  return {
    ...(altitude === undefined ? {} : { altitude }),
    moulds: batch.mould,
    crust: batch.crust && isCrustBegun(batch.crust) ? batch.crust : null,
    mix: {
      water: water.fraction,
      protein: protein.fraction,
      fat: fat.fraction,
      salt: salt.fraction,
    },
    cookRuleSetId: batch.process.cookRuleSetId,
    cookLimitId: batch.process.cookLimitId,
    coolRuleSetId: batch.process.coolRuleSetId,
    facts: cookFacts(formula.values, batch.formula.familyId, finishedMassG),
    coolFacts: coolFactsOf(cure.values, brine?.values ?? null),
  };
}
