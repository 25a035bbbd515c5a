import type { Batch } from '../batch/index.ts';
import { type Entry, entryValue } from '../quantities/index.ts';
import { newThermometerSlice } from '../thermometer/index.ts';
import type { Kitchen } from './kitchen.ts';

const isBlank = ({ text }: Entry) => text.trim() === '';
const asDefault = (entry: Entry): Entry => ({ ...entry, origin: 'default' });

/**
 * The smallest step any scale of the kitchen shows: curing salt is weighed on that one. Null while none is known.
 * A step that cannot be read, or of zero, counts for nothing.
 */
export function finestStep({ scales }: Pick<Kitchen, 'scales'>): Entry | null {
  const steps = scales.flatMap(({ step }) => {
    const massG = entryValue('mass', step);
    return massG === null || massG <= 0 ? [] : [{ step, massG }];
  });
  return steps.toSorted((a, b) => a.massG - b.massG)[0]?.step ?? null;
}

function withRuleSets(batch: Batch, kitchen: Kitchen): Batch {
  const { cure, process } = batch;
  const takes = {
    cure: cure.ruleSetId === null && kitchen.cureRuleSetId !== null,
    cook: process.cookRuleSetId === null && kitchen.cookRuleSetId !== null,
    cool: process.coolRuleSetId === null && kitchen.coolRuleSetId !== null,
  };
  if (!takes.cure && !takes.cook && !takes.cool) return batch;
  return {
    ...batch,
    cure: takes.cure ? { ...cure, ruleSetId: kitchen.cureRuleSetId } : cure,
    process: {
      ...process,
      ...(takes.cook ? { cookRuleSetId: kitchen.cookRuleSetId } : {}),
      ...(takes.cool ? { coolRuleSetId: kitchen.coolRuleSetId } : {}),
    },
    ruleSetDefaults: takes,
  };
}

/** The kitchen's thermometers with their checks, where nobody has written one into the batch. */
function withThermometers(batch: Batch, { thermometers, altitude }: Kitchen): Batch {
  if (thermometers.length === 0 && isBlank(altitude)) return batch;
  const slice = batch.thermometers ?? newThermometerSlice();
  const unwritten = slice.thermometers.every(
    ({ name, ice, boil }) => name === '' && isBlank(ice) && isBlank(boil),
  );
  return {
    ...batch,
    thermometers: {
      ...slice,
      altitude: isBlank(slice.altitude) && !isBlank(altitude) ? asDefault(altitude) : slice.altitude,
      thermometers: unwritten && thermometers.length > 0 ? thermometers : slice.thermometers,
    },
  };
}

/**
 * A newly begun batch with what the kitchen has set once: each field that is still blank takes the kitchen's value,
 * marked as a default; rule sets wait to be confirmed. What was typed already stands.
 */
export function withKitchen(batch: Batch, kitchen: Kitchen): Batch {
  const step = finestStep(kitchen);
  const { product, cure, seasoning } = batch;
  const named = product.kitchen.trim() === '' && kitchen.name.trim() !== '';
  const filled: Batch = {
    ...batch,
    product: named ? { ...product, kitchen: kitchen.name.trim() } : product,
    cure: step && isBlank(cure.scaleReadability) ? { ...cure, scaleReadability: asDefault(step) } : cure,
    ...(seasoning && step && isBlank(seasoning.scaleReadability)
      ? { seasoning: { ...seasoning, scaleReadability: asDefault(step) } }
      : {}),
  };
  return withThermometers(withRuleSets(filled, kitchen), kitchen);
}
