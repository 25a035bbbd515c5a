import type { MissingInput, StageResult } from '../findings/index.ts';
import { joinAllergens } from '../ingredients/index.ts';
import { compensatedSum, entryValue } from '../quantities/index.ts';
import { audienceWarnings } from './audience.ts';
import { carriedParts } from './carried.ts';
import { useByDate } from './dates.ts';
import type { LabelFindingId } from './finding-ids.ts';
import { labelFindings } from './findings.ts';
import { ingredientList } from './ingredient-list.ts';
import { meatGroups } from './meat-groups.ts';
import { type Nutrition, nutritionOf } from './nutrition.ts';
import { type EuRowId, euTable, type PanelRow, usPanel } from './panels.ts';
import { extraParts, type LabelPart, lineParts } from './parts.ts';
import { quantitiesToDeclare } from './quantities-to-declare.ts';
import { addedWaterShare } from './quid.ts';
import { ingoingOf, readAfterCook, readCookDay, readFilled, readLifeDays } from './read-label.ts';
import { servingsOf } from './servings.ts';
import type { LabelSlice } from './slice.ts';
import type { LabelContext, LabelValues } from './values.ts';
import { labelVerdicts } from './verdicts.ts';

const NO_DETAILS = { get: () => undefined };
const PER_100_G = 100;
const GAME: readonly string[] = ['game', 'game-bird'];
const NITRITE_ROWS = /^(curing-salt|sodium-nitrite|sodium-nitrate|potassium-nitrate)/;

function scaled(nutrition: Nutrition, factor: number): Nutrition {
  const times = (value: number | null) => (value === null ? null : value * factor);
  return Object.fromEntries(
    Object.entries(nutrition).map(([name, amount]) => [
      name,
      { ...amount, value: times(amount.value), min: times(amount.min), max: times(amount.max) },
    ]),
  ) as unknown as Nutrition;
}

/** Of what a cure brings: open while no extra tells how much salt of it the food took up. */
const OF_A_CURE = [
  'sodiumMg',
  'sugarsG',
  'addedSugarsG',
  'carbohydrateG',
  'availableCarbohydrateG',
] as const satisfies readonly (keyof Nutrition)[];

function withoutCure(nutrition: Nutrition): Nutrition {
  const open = OF_A_CURE.map((name) => [name, { ...nutrition[name], value: null, max: null }]);
  return { ...nutrition, ...Object.fromEntries(open) };
}

/** Whether any nitrite or nitrate is in it: of its own, or in what comes cured. */
function nitriteIn(parts: readonly LabelPart[]): boolean {
  return parts.some(
    ({ massG, line, row, madeOf }) =>
      massG !== 0 &&
      (line?.part === 'curing-salt' ||
        (row !== undefined && (NITRITE_ROWS.test(row.id) || row.category === 'cured-meat')) ||
        /nitrit|nitrat|E ?25[0-2]/i.test(madeOf)),
  );
}

/**
 * A label from the formula: name, list in falling weight of what went in, quantities, allergens, nutrition after the
 * cook, warnings and dates. It helps with the arithmetic of a label; it is not legal advice.
 */
export function labelStage(
  slice: LabelSlice,
  context: LabelContext,
): StageResult<LabelValues, LabelFindingId> {
  const values = labelValues(slice, context);
  return {
    values,
    findings: labelFindings(slice, context, values),
    verdicts: labelVerdicts(slice, context, values),
    missing: labelMissing(slice, values),
  };
}

function labelValues(slice: LabelSlice, context: LabelContext): LabelValues {
  const { mix, facts } = context.formulaValues;
  const filled = readFilled(slice, context);
  const parts = [
    ...lineParts(slice, {
      formula: context.formula,
      lines: mix.lines,
      table: context.table,
      details: context.details ?? NO_DETAILS,
      filledShare: filled.share,
    }),
    ...carriedParts(context.carried, slice.extras, {
      table: context.table,
      details: context.details ?? NO_DETAILS,
    }),
    ...extraParts(slice.extras.filter(({ id }) => context.carried.every((food) => food.id !== id))),
  ];
  const ingoingG = ingoingOf(parts);
  const finishedG = slice.loss === 'nothing' ? ingoingG : context.finishedG;
  const after = readAfterCook(slice, ingoingG, context.finishedG);
  const counted =
    after === null || ingoingG === null
      ? null
      : nutritionOf(
          parts.map(({ id, massG, per100, openFraction }) => ({
            lineId: id,
            massG: massG ?? 0,
            per100,
            openFraction,
          })),
          after,
        );
  const isCureTold = slice.extras.some(({ figures }) => figures.salt.text.trim() !== '');
  const nutrition =
    counted !== null && context.curedElsewhere === true && !isCureTold ? withoutCure(counted) : counted;
  const meat = meatGroups(parts);
  const real = parts.filter(({ massG }) => massG !== 0);
  const dryG = compensatedSum(
    real.filter(({ row }) => row?.category !== 'water').map(({ massG }) => massG ?? 0),
  );
  const servingG = entryValue('mass', slice.serving) || null;
  const netG = entryValue('mass', slice.netWeight) || null;
  const { cookedOn } = readCookDay(slice, context);
  const lifeDays = readLifeDays(slice);
  const nitrite = nitriteIn(parts);
  const unnamed = real.some(({ row, line }) => row === undefined && line !== null && line.part !== 'salt');
  const alcohol = nutrition?.alcoholG;
  return {
    parts,
    filledG: filled.filledG,
    filledFrom: filled.from,
    ingoingG,
    finishedG,
    yieldFraction: ingoingG === null || finishedG === null || ingoingG === 0 ? null : finishedG / ingoingG,
    eu: ingredientList(parts, meat, 'eu'),
    us: ingredientList(parts, meat, 'us'),
    euAllergens: joinAllergens(real.map(({ euAllergens }) => euAllergens)),
    usAllergens: joinAllergens(real.map(({ usAllergens }) => usAllergens)),
    meat,
    quantities: quantitiesToDeclare(parts, meat, ingoingG, finishedG),
    addedWaterFraction: finishedG === null || ingoingG === null ? null : addedWaterShare(finishedG, dryG),
    nutrition,
    usPanel: nutrition && servingG !== null ? usPanel(nutrition, servingG) : null,
    euTable: nutrition ? euTable(nutrition) : null,
    euPerServing: nutrition && servingG !== null ? euTable(scaled(nutrition, servingG / PER_100_G)) : null,
    servingG,
    netG,
    servings: netG === null || servingG === null ? null : servingsOf(netG, servingG),
    warnings: audienceWarnings({
      familyId: context.formula.familyId,
      liver: facts.liverG === null ? null : facts.liverG > 0,
      nitrite: nitrite ? true : unnamed || context.nitriteElsewhere === true ? null : false,
      game: real.some(({ row }) => row !== undefined && GAME.includes(row.speciesGroup)),
      alcohol: alcohol === undefined ? null : (alcohol.max ?? 0) > 0,
    }),
    nitrite,
    cookedOn,
    lifeDays,
    useBy: cookedOn === null || lifeDays === null ? null : useByDate(cookedOn, lifeDays, slice.cookDayCounts),
    storeAtC: entryValue('temperature', slice.storeAt),
  };
}

/** Rows of the European table that a label must have. */
const MUST_HAVE: readonly EuRowId[] = [
  'energyKj',
  'fat',
  'saturates',
  'carbohydrate',
  'sugars',
  'protein',
  'salt',
];

function silentLines(rows: readonly PanelRow<EuRowId>[] | null): string[] {
  const open = (rows ?? []).filter(({ id, declared }) => MUST_HAVE.includes(id) && declared === null);
  return [...new Set(open.flatMap(({ exact }) => exact.unknownLines))];
}

function labelMissing(slice: LabelSlice, values: LabelValues): MissingInput[] {
  const missing: MissingInput[] = [];
  const need = (known: unknown, field: string, neededFor: string) => {
    if (known === null || known === '') missing.push({ field, neededFor });
  };
  need(slice.name.trim(), 'label.name', 'label.name-of-food');
  need(values.ingoingG, 'formula.lines', 'label.list');
  need(values.finishedG, 'product.finished', 'label.nutrition');
  need(slice.loss, 'label.loss', 'label.nutrition');
  if (slice.loss === 'fat-weighed')
    need(entryValue('mass', slice.drainedFat), 'label.drainedFat', 'label.nutrition');
  const { nutrition } = values;
  if (
    nutrition &&
    nutrition.alcoholG.value === null &&
    (nutrition.alcoholG.max ?? 1) > 0 &&
    slice.alcohol === null
  )
    missing.push({ field: 'label.alcohol', neededFor: 'label.energy' });
  for (const id of silentLines(values.euTable))
    missing.push({ field: `label.lines.${id}.figures`, neededFor: 'label.nutrition' });
  need(values.servingG, 'label.serving', 'label.panel');
  need(values.netG, 'label.netWeight', 'label.servings');
  need(values.cookedOn, 'label.cookedOn', 'label.use-by');
  need(values.lifeDays, 'label.life', 'label.use-by');
  need(values.storeAtC, 'label.storeAt', 'label.store-line');
  return missing;
}
