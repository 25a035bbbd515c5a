import { type Batch, withThermometers } from '@larderwright/calc/batch';
import type { Finding, MissingInput, Verdict } from '@larderwright/calc/findings';
import { formulaStage } from '@larderwright/calc/formula';
import { loadIngredients } from '@larderwright/calc/ingredients';
import {
  type CookValues,
  cookFacts,
  cookLoss,
  cookStage,
  type HoldAtPresent,
  holdsAtPresent,
  meatKinds,
  type Reduction,
  reductionsOf,
  type ValueRow,
  valuesOf,
} from '@larderwright/calc/lethality';
import { entryValue } from '@larderwright/calc/quantities';
import type { CurveModel } from '../charts/index.ts';
import { logName } from '../readings/edits.ts';
import { type ReadingNotes, readingNotes } from '../readings/reading-notes.ts';
import { nowIso } from '../state/clock.ts';
import { cookWords } from '../words/cook.ts';
import { learnWords } from '../words/index.ts';
import { cookChart } from './cook-chart.ts';
import { type LimitChoices, limitChoices } from './limit-choices.ts';
import { type Stand, standOf } from './stand-of.ts';

/** What calc makes of the cook on the bench, and what the page shows of it. */
export interface CookComputed {
  readonly values: CookValues;
  readonly verdict: Verdict;
  readonly findings: readonly Finding[];
  readonly missing: readonly MissingInput[];
  readonly choices: LimitChoices;
  readonly stand: Stand;
  /** What each log is called. */
  readonly names: ReadonlyMap<string, string>;
  readonly notes: ReadingNotes;
  readonly chart: CurveModel;
  /** What to hold at the present temperature, by open log. */
  readonly present: readonly HoldAtPresent[];
  /** By id of the log. Information. */
  readonly reductions: ReadonlyMap<string, readonly Reduction[]>;
  readonly pasteurisation: ReadonlyMap<string, readonly ValueRow[]>;
  readonly loss: ReturnType<typeof cookLoss>;
  /** Species of poultry in the formula. */
  readonly birds: readonly string[];
}

/** Hottest of the readings that count, °C. */
function peakOf(readings: CookValues['logs'][number]['readings']): number | null {
  const sound = readings.flatMap(({ state, tempC }) => (state === 'counts' && tempC !== null ? [tempC] : []));
  return sound.length > 0 ? sound.reduce((most, tempC) => Math.max(most, tempC)) : null;
}

/** Fetches the composition table, which says what is poultry, and gives the function that judges a batch. */
export async function loadCook(): Promise<(batch: Batch) => CookComputed> {
  const composition = await loadIngredients();
  learnWords(cookWords);
  return (entered) => {
    const batch = withThermometers(entered, nowIso());
    const formula = formulaStage(batch.formula, { composition });
    const finishedG = entryValue('mass', batch.product.finished);
    const facts = cookFacts(formula.values, batch.formula.familyId, finishedG);
    const { values, verdicts, findings, missing } = cookStage(batch, facts);
    const names = new Map(batch.process.logs.map((log, i) => [log.id, logName(log, i)]));
    const meats = meatKinds(
      batch.formula.lines.map(({ ingredientId }) => ingredientId),
      composition,
    );
    const byLog = <T>(of: (log: CookValues['logs'][number]) => T) =>
      new Map(values.logs.map((log) => [log.logId, of(log)]));
    const peaks = values.logs.flatMap(({ hold, readings }) => hold?.peakC ?? peakOf(readings) ?? []);
    const [verdict] = verdicts;
    if (!verdict) throw new Error('The cook was not judged');
    return {
      values,
      verdict,
      findings,
      missing,
      choices: limitChoices(values),
      stand: standOf(values, verdict),
      names,
      notes: readingNotes(
        batch,
        values.logs.map(({ log }) => log),
        findings,
      ),
      chart: cookChart(values, batch, names),
      present: holdsAtPresent(values),
      reductions: byLog((log) => reductionsOf(log, meats, facts.comminuted !== false)),
      pasteurisation: byLog(valuesOf),
      loss: cookLoss({
        coreC: peaks.length > 0 ? Math.max(...peaks) : null,
        bound: facts.comminuted,
        saltFraction: formula.values.mix.salt.minFraction,
      }),
      birds: formula.values.facts.poultrySpecies,
    };
  };
}
