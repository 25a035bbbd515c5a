import type { MassFlow } from '@larderwright/calc/plan';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/plan-and-cost/mass-answers.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { gramsText } from '../parts/number-text.ts';
import { useShared } from '../state/use-shared.ts';
import { planWorkings } from '../words/plan.ts';
import { $plan } from './computed.ts';
import { PlanNeeded } from './plan-needed.tsx';

const STEPS: readonly (readonly [label: string, of: (flow: MassFlow) => number])[] = [
  [say.mixInTheBowl, (flow) => flow.mixG],
  [say.testPoach, (flow) => -flow.testG],
  [say.leftOnBowlAndFiller, (flow) => -flow.residueG],
  [say.filled, (flow) => flow.fillG],
  [say.lostInCookingAndChilling, (flow) => -flow.cookLossG],
  [say.finished, (flow) => flow.finishedG],
  [say.endsAndCrumbs, (flow) => -flow.endLossG],
  [say.toServe, (flow) => flow.servableG],
];

const signed = (massG: number) => (massG < 0 ? `− ${gramsText(-massG)}` : gramsText(massG));

/** From the table back to the bowl. */
export function MassAnswers() {
  return (
    <Computed of={useShared($plan)}>
      {(computed) => {
        const { values, findings, formulaG } = computed;
        const { flow, factor, portions, leftoverG } = values;
        const mass = (massG: number | undefined) => (massG === undefined ? null : gramsText(massG));
        return (
          <>
            <PlanNeeded of={computed} figures={['plan.masses']} />
            <div class="answers">
              <Answer
                label={say.finishedWeight}
                value={mass(flow?.finishedG)}
                worked={<p>{say.derivedMassBalance(planWorkings.finished)}</p>}
              />
              <Answer
                label={say.rawFill}
                value={mass(flow?.fillG)}
                worked={<p>{say.derivedMassBalance2(planWorkings.fill)}</p>}
              />
              <Answer
                label={say.mixToMake}
                value={mass(flow?.mixG)}
                worked={
                  <>
                    <p>{say.derivedMassBalance3(planWorkings.mix)}</p>
                    {flow ? (
                      <FigureTable
                        columns={[say.fromTheBowlToThePlate, say.weight]}
                        rows={STEPS.map(([label, of]) => ({
                          key: label,
                          head: label,
                          cells: [signed(of(flow))],
                        }))}
                      />
                    ) : null}
                  </>
                }
              />
              <Answer
                label={say.timesTheFormula}
                value={factor === null ? null : `× ${fixedText(factor, 3)}`}
                missing={say.cannotTellFormulaMixNot}
                worked={
                  <p>
                    {planWorkings.factor}
                    {flow && formulaG !== null ? say.here(gramsText(flow.mixG), gramsText(formulaG)) : null}
                  </p>
                }
              />
              <Answer
                label={say.wholePortions}
                value={
                  portions === null || leftoverG === null
                    ? null
                    : `${portions}${leftoverG >= 0.5 ? say.andOver(gramsText(leftoverG)) : ''}`
                }
                worked={<p>{say.serveDividedPortionRoundedDown}</p>}
              />
            </div>
            <FindingList findings={[...at(findings, 'plan.want'), ...at(findings, 'mould.moulds')]} />
          </>
        );
      }}
    </Computed>
  );
}
