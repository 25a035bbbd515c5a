import type { LabelLine, LabelSlice } from '@larderwright/calc/label';
import { newLabelLine, newLabelSlice } from '@larderwright/calc/label';
import type { PlanSlice } from '@larderwright/calc/plan';
import { newPlanLine, newPlanSlice } from '@larderwright/calc/plan';
import { enteredEntry } from '@larderwright/calc/quantities';

/** Lines of a formula as they are bought: money a kilogram, and what trimming leaves, %. */
export type Bought = Readonly<Record<string, string | readonly [perKg: string, trimYield: string]>>;

/** A plan from portions of a mass, g, with every line priced. */
export function planned(portionG: string, bought: Bought, more: Partial<PlanSlice> = {}): PlanSlice {
  return {
    ...newPlanSlice(),
    portionMass: enteredEntry(portionG, 'g'),
    lines: Object.entries(bought).map(([lineId, given]) => {
      const [perKg, trimYield] = typeof given === 'string' ? [given, '100'] : given;
      return {
        ...newPlanLine(lineId),
        price: enteredEntry(perKg, 'money'),
        trimYield: enteredEntry(trimYield, '%'),
      };
    }),
    labour: enteredEntry('150', 'min'),
    labourRate: enteredEntry('16', 'money'),
    overhead: enteredEntry('6', 'money'),
    chillerCapacity: enteredEntry('12', 'kg'),
    ...more,
  };
}

/** What a label adds to one line of the formula. */
export type Said = Readonly<Record<string, Partial<Omit<LabelLine, 'id'>>>>;

/** A label for the counter or a pack. */
export function labelled(
  name: string,
  maker: string,
  said: Said,
  more: Partial<LabelSlice> = {},
): LabelSlice {
  return {
    ...newLabelSlice(),
    market: 'gb',
    name,
    maker,
    lines: Object.entries(said).map(([id, line]) => ({ ...newLabelLine(id), ...line })),
    pack: 'wrapped',
    audience: 'general',
    ...more,
  };
}
