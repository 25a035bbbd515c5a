import type { MassFlow } from '@larderwright/calc/plan';
import { fixedText } from '@larderwright/calc/quantities';
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
  ['Mix in the bowl', (flow) => flow.mixG],
  ['Test poach', (flow) => -flow.testG],
  ['Left on bowl and filler', (flow) => -flow.residueG],
  ['Filled', (flow) => flow.fillG],
  ['Lost in cooking and chilling', (flow) => -flow.cookLossG],
  ['Finished', (flow) => flow.finishedG],
  ['Ends and crumbs', (flow) => -flow.endLossG],
  ['To serve', (flow) => flow.servableG],
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
                label="Finished weight"
                value={mass(flow?.finishedG)}
                worked={<p>{planWorkings.finished} Derived: mass balance.</p>}
              />
              <Answer
                label="Raw fill"
                value={mass(flow?.fillG)}
                worked={<p>{planWorkings.fill} Derived: mass balance.</p>}
              />
              <Answer
                label="Mix to make"
                value={mass(flow?.mixG)}
                worked={
                  <>
                    <p>{planWorkings.mix} Derived: mass balance.</p>
                    {flow ? (
                      <FigureTable
                        columns={['From the bowl to the plate', 'Weight']}
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
                label="Times the formula"
                value={factor === null ? null : `× ${fixedText(factor, 3)}`}
                missing="Cannot tell: the formula or the mix is not complete"
                worked={
                  <p>
                    {planWorkings.factor}
                    {flow && formulaG !== null
                      ? ` Here ${gramsText(flow.mixG)} ÷ ${gramsText(formulaG)}.`
                      : null}
                  </p>
                }
              />
              <Answer
                label="Whole portions"
                value={
                  portions === null || leftoverG === null
                    ? null
                    : `${portions}${leftoverG >= 0.5 ? ` and ${gramsText(leftoverG)} over` : ''}`
                }
                worked={<p>To serve, divided by the portion, rounded down. Derived.</p>}
              />
            </div>
            <FindingList findings={[...at(findings, 'plan.want'), ...at(findings, 'mould.moulds')]} />
          </>
        );
      }}
    </Computed>
  );
}
