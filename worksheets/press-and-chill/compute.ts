import { type Batch, recordStage, withThermometers } from '@larderwright/calc/batch';
import { brineStage } from '@larderwright/calc/brine';
import {
  type CoolComparison,
  type CoolValues,
  coolAcrossRuleSets,
  coolFactsOf,
  coolStage,
} from '@larderwright/calc/cooling';
import { cureStage } from '@larderwright/calc/cure';
import type { Finding, Verdict } from '@larderwright/calc/findings';
import { formulaStage } from '@larderwright/calc/formula';
import {
  type ByFoodCode,
  byFoodCode,
  type CoolingGrowth,
  growthFacts,
  growthInCooling,
  type ListeriaByProduct,
  type ListeriaGrowth,
  listeriaByProduct,
  listeriaGrowth,
  type MeasuredProduct,
  measuredOf,
  type PerfringensStays,
  perfringensInStorage,
  staysOf,
} from '@larderwright/calc/growth';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { type MouldValues, mouldStage } from '@larderwright/calc/mould';
import { type PressValues, pressStage } from '@larderwright/calc/press';
import { entryValue } from '@larderwright/calc/quantities';
import type { CurveModel } from '../charts/index.ts';
import { logName } from '../readings/edits.ts';
import { type ReadingNotes, readingNotes } from '../readings/reading-notes.ts';
import { nowIso } from '../state/clock.ts';
import { coolWords } from '../words/cool.ts';
import { learnWords } from '../words/index.ts';
import { pressWords } from '../words/press.ts';
import { recordWords } from '../words/record.ts';
import { chillChart } from './chill-chart.ts';
import { type ChillStand, chillStandOf } from './chill-stand-of.ts';
import { type CuredCheck, curedChecks } from './cured-checks.ts';
import { type LegRow, legRows } from './leg-rows.ts';

/** What calc makes of the press and the chill on the bench, and what the page shows of it. */
export interface ChillComputed {
  readonly press: PressValues;
  readonly cool: CoolValues;
  readonly verdicts: readonly Verdict[];
  /** Of the press, the cooling and the record of what was decided. */
  readonly findings: readonly Finding[];
  readonly legs: readonly LegRow[];
  readonly cured: readonly CuredCheck[];
  readonly stand: ChillStand;
  readonly names: ReadonlyMap<string, string>;
  readonly notes: ReadingNotes;
  readonly chart: CurveModel;
  /** The same log by every rule set, never averaged. */
  readonly across: readonly CoolComparison[];
  /** Information, of which no verdict hears. */
  readonly growth: readonly CoolingGrowth[];
  readonly storage: {
    readonly listeria: ListeriaGrowth;
    /** By pH and water activity; null until a person wants it. */
    readonly byProduct: ListeriaByProduct | null;
    /** By pH and water activity, tables A and B of the Food Code; null where one is unknown. */
    readonly byFoodCode: readonly [ByFoodCode, ByFoodCode] | null;
    readonly perfringens: PerfringensStays;
  } | null;
}

/** Plan of the smallest fill, which a board must go into; null while a mould is unknown. */
function smallestPlanMm2({ moulds }: MouldValues): number | null {
  const plans = moulds.map((mould) => mould.planAreaMm2);
  return plans.length === 0 || plans.includes(null) ? null : Math.min(...plans.map((plan) => plan ?? 0));
}

function foodCodeOf({ ph, waterActivity }: MeasuredProduct): readonly [ByFoodCode, ByFoodCode] | null {
  if (ph === null || waterActivity === null) return null;
  const [a, b] = [byFoodCode('A', waterActivity, ph), byFoodCode('B', waterActivity, ph)];
  return a === null || b === null ? null : [a, b];
}

/** Fetches the composition table, on which the cure rests, and gives the function that judges a batch. */
export async function loadChill(): Promise<(batch: Batch) => ChillComputed> {
  const composition = await loadIngredients();
  for (const words of [coolWords, pressWords, recordWords]) learnWords(words);
  return (entered) => {
    const batch = withThermometers(entered, nowIso());
    const { familyId } = batch.formula;
    const finishedMassG = entryValue('mass', batch.product.finished);
    const formula = formulaStage(batch.formula, { composition });
    const cure = cureStage(batch, { composition, formulaResult: formula, finishedMassG });
    const mould = mouldStage(batch.mould, { totalMassG: formula.values.mix.totalG });
    const press = pressStage(batch.press, { familyId, planAreaMm2: smallestPlanMm2(mould.values) });
    const brine = batch.brine
      ? brineStage({ cure: batch.cure, brine: batch.brine }, { finishedMassG }).values
      : null;
    const cool = coolStage(batch, coolFactsOf(cure.values, brine));
    const about = growthFacts(cool.values.facts, formula.values.mix.salt.maxFraction);
    const record = recordStage(batch, cool.verdicts);
    const names = new Map(batch.process.logs.map((log, i) => [log.id, logName(log, i)]));
    const logs = cool.values.coolings[0]?.logs ?? [];
    return {
      press: press.values,
      cool: cool.values,
      verdicts: cool.verdicts,
      findings: [...press.findings, ...cool.findings, ...record.findings],
      legs: legRows(cool.values, cool.verdicts, names),
      cured: curedChecks(cool.values),
      stand: chillStandOf(cool.values, cool.verdicts),
      names,
      notes: readingNotes(
        batch,
        logs.map(({ log }) => log),
        cool.findings,
      ),
      chart: chillChart(cool.values, batch, names),
      across: coolAcrossRuleSets(batch, cool.values.facts),
      growth: growthInCooling(batch.process, about),
      storage: batch.storage
        ? {
            listeria: listeriaGrowth(batch.storage.listeriaGroupId, staysOf(batch.storage)),
            byProduct: batch.storage.measured
              ? listeriaByProduct(measuredOf(batch.storage), staysOf(batch.storage))
              : null,
            byFoodCode: foodCodeOf(measuredOf(batch.storage)),
            perfringens: perfringensInStorage(about, staysOf(batch.storage)),
          }
        : null,
    };
  };
}
