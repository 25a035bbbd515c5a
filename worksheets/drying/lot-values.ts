import type { DryingSlice, DryingValues } from '@larderwright/calc/drying';
import type { Verdict } from '@larderwright/calc/findings';
import { type Entry, fixedText, type QuantityKind } from '@larderwright/calc/quantities';
import * as say from '#words/drying/lot-values.ts';
import { filled, percent, words } from '../batch-sheet/build/filled.ts';
import { sheetVerdicts } from '../batch-sheet/build/verdicts.ts';
import type { Filled, SheetVerdict } from '../batch-sheet/sheet-model.ts';
import { plannedGrams } from '../whole-muscle/planned.ts';
import { DEGREE_HOUR_RULES, DRYING_KINDS } from '../words/drying-names.ts';

/** What a card for one lot says. Null prints an empty box. */
export interface LotValues {
  readonly plan: string | null;
  readonly kind: string | null;
  readonly start: Filled | null;
  readonly now: Filled | null;
  readonly lossTarget: Filled | null;
  readonly targetMass: Filled | null;
  readonly lost: string | null;
  readonly startSalt: Filled | null;
  readonly startMoisture: Filled | null;
  readonly startProtein: Filled | null;
  readonly moisture: Filled | null;
  readonly protein: Filled | null;
  readonly waterActivity: string | null;
  readonly ph: string | null;
  readonly estimates: readonly string[];
  readonly rule: string | null;
  readonly steps: readonly (readonly [Filled | null, Filled | null])[];
  readonly degreeHours: string | null;
  readonly reached: string | null;
  readonly trichina: Readonly<Record<keyof DryingSlice['trichina'], Filled | null>> | null;
  readonly trichinaDays: string | null;
  readonly verdicts: readonly SheetVerdict[];
}

const typed = (kind: QuantityKind, entry: Entry) => filled(kind, entry, entry.unit);

/** Sets one lot in words and figures. */
export function lotValues(slice: DryingSlice, values: DryingValues, verdicts: readonly Verdict[]): LotValues {
  const { trichina } = slice;
  const { degreeHours, degreeHourTable } = values;
  return {
    plan: words(slice.approvedPlan),
    kind: slice.kind && DRYING_KINDS[slice.kind],
    start: typed('mass', slice.start),
    now: typed('mass', slice.now),
    lossTarget: typed('fraction', slice.lossTarget),
    targetMass: plannedGrams(values.targetMassG),
    lost: percent(values.lossFraction, 1),
    startSalt: typed('fraction', slice.startSalt),
    startMoisture: typed('fraction', slice.startMoisture),
    startProtein: typed('fraction', slice.startProtein),
    moisture: typed('fraction', slice.moisture),
    protein: typed('fraction', slice.protein),
    waterActivity: words(slice.waterActivity),
    ph: words(slice.ph),
    estimates: estimates(values),
    rule: slice.degreeHourRule && DEGREE_HOUR_RULES[slice.degreeHourRule],
    steps: slice.steps.map((step) => [typed('temperature', step.temp), typed('time', step.hours)]),
    degreeHours:
      degreeHours === null || degreeHourTable === null
        ? null
        : say.ofH(
            fixedText(degreeHours.total, 0, 'up'),
            fixedText(degreeHours.limit, 0),
            degreeHourTable.unit,
          ),
    reached: slice.reachedPh53 === null ? null : slice.reachedPh53 ? say.yes : say.no,
    trichina: {
      casing: typed('length', trichina.casing),
      holdTemp: typed('temperature', trichina.holdTemp),
      holdHours: typed('time', trichina.holdHours),
      total: typed('mass', trichina.total),
      dryIngredients: typed('mass', trichina.dryIngredients),
      salt: typed('mass', trichina.salt),
    },
    trichinaDays: values.trichina === null ? null : say.days(values.trichina.days),
    verdicts: sheetVerdicts(verdicts),
  };
}

function estimates({ now, atTarget, measuredRatio, estimatedRatio }: DryingValues): string[] {
  const lines: string[] = [];
  const after = (name: string, of: DryingValues['now']) => {
    if (of === null) return;
    const activity = of.waterActivity;
    const range =
      activity === null
        ? ''
        : say.waterActivityAboutToAnEstimate(fixedText(activity.low, 3), fixedText(activity.high, 3, 'up'));
    lines.push(say.saltOnTheWater(name, percent(of.waterPhaseFraction), range));
  };
  after(say.now, now);
  after(say.atTheLossWanted, atTarget);
  if (measuredRatio !== null) lines.push(say.moistureToProteinMeasured(fixedText(measuredRatio, 2, 'up')));
  if (estimatedRatio !== null) lines.push(say.moistureToProteinEstimated(fixedText(estimatedRatio, 2, 'up')));
  return lines;
}
