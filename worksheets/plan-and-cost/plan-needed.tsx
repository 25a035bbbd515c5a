import { Needed } from '../parts/needed.tsx';
import { planFigureNames } from '../words/plan.ts';
import type { PlanComputed } from './compute.ts';
import { planFieldName } from './field-names.ts';

/** What some of the plan's figures still need. */
export function PlanNeeded({ of, figures }: { of: PlanComputed; figures: readonly string[] }) {
  const lineNames = new Map(of.values.purchases.map(({ lineId, name }) => [lineId, name]));
  return (
    <Needed
      missing={of.missing}
      figures={Object.fromEntries(figures.map((figure) => [figure, planFigureNames[figure] ?? figure]))}
      nameOf={(field) => planFieldName(field, of.plan, lineNames)}
    />
  );
}
