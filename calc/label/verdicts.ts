import type { Verdict } from '../findings/index.ts';
import { dateOfStamp, isLater } from './dates.ts';
import type { LabelFindingId } from './finding-ids.ts';
import { uncounted } from './findings.ts';
import type { LabelSlice } from './slice.ts';
import type { LabelContext, LabelValues } from './values.ts';

type LabelVerdict = Verdict<LabelFindingId>;

function allergens(context: LabelContext, values: LabelValues): LabelVerdict {
  const open = values.parts.filter(
    (part) => part.massG !== 0 && (!part.allergensTold || (part.needsMadeOf && part.madeOf === '')),
  );
  const told = values.parts.length > 0 && open.length === 0 && !uncounted(context, values);
  return {
    id: 'label.allergens',
    stage: 'label',
    state: told ? 'pass' : 'cannot-tell',
    reason: told ? 'label.allergens-told' : 'label.allergens-open',
    params: { count: open.length, names: open.map(({ ownName }) => ownName || '?').join(', ') },
    basis: 'eu-1169-2011',
    mark: 'confirmed',
  };
}

function useBy(slice: LabelSlice, context: LabelContext, values: LabelValues): LabelVerdict {
  const written = dateOfStamp(context.writtenUseBy);
  const late = written === null || values.useBy === null ? null : isLater(written, values.useBy);
  const base = { id: 'label.use-by', stage: 'label', basis: null, mark: 'common-practice' } as const;
  // A life nobody has set judges nothing.
  if (late !== null && slice.life.origin === 'default')
    return {
      ...base,
      state: 'cannot-tell',
      reason: 'label.life-is-default',
      params: { days: values.lifeDays ?? 0 },
    };
  if (late === null)
    return {
      ...base,
      state: 'cannot-tell',
      reason: 'label.date-unknown',
      params: { counted: values.useBy ?? '', written: context.writtenUseBy.slice(0, 40) },
    };
  return {
    ...base,
    state: late ? 'fail' : 'pass',
    reason: late ? 'label.date-too-late' : 'label.date-agrees',
    params: { counted: values.useBy ?? '', written: written ?? '' },
  };
}

/** Whether every allergen has been told, and whether the date on the batch sheet is within the life from the cook. */
export function labelVerdicts(slice: LabelSlice, context: LabelContext, values: LabelValues): LabelVerdict[] {
  return [allergens(context, values), useBy(slice, context, values)];
}
