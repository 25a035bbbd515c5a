import type { Blend } from '@larderwright/calc/blend';
import type { Finding } from '@larderwright/calc/findings';
import * as say from '#words/lean-and-fat/least-cost.ts';
import { Answer } from '../parts/answer.tsx';
import { Computed, CouldNot } from '../parts/computed.tsx';
import { FigureTable } from '../parts/figure-table.tsx';
import { FindingList } from '../parts/finding-list.tsx';
import { Needed } from '../parts/needed.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { Worked } from '../parts/worked.tsx';
import { useShared } from '../state/use-shared.ts';
import { blendFigureNames, blendWorkings } from '../words/blend.ts';
import { moneyText } from '../words/money.ts';
import { $asked } from './asked.ts';
import type { BlendComputed } from './compute.ts';
import { $blend } from './computed.ts';
import { blendFieldName } from './field-names.ts';
import { MakeupAnswers } from './makeup-answers.tsx';
import { StandardVerdicts } from './sold-under.tsx';
import { WriteBlend } from './write-blend.tsx';

/** Asks for the cheapest blend and says what came of it. */
export function LeastCostAnswers() {
  const asked = useShared($asked);
  return (
    <Computed of={useShared($blend)}>
      {(computed) => {
        const { slice, currency } = computed;
        const ask = async () => {
          $asked.set({ state: 'asking' });
          try {
            const { askLeastCost } = await import('./ask.ts');
            $asked.set({ state: 'answered', ...(await askLeastCost(slice, currency)) });
          } catch (error) {
            $asked.set({ state: 'failed', detail: error instanceof Error ? error.message : String(error) });
          }
        };
        const stale = asked.state === 'answered' && asked.slice !== slice;
        return (
          <>
            <p class="buttons">
              <button type="button" class="press-first" disabled={asked.state === 'asking'} onClick={ask}>
                {say.findTheCheapestBlend}
              </button>
            </p>
            <div role="status">
              {asked.state === 'asking' ? <p class="say">{say.beingWorkedOut}</p> : null}
              {stale ? <p class="say">{say.somethingChangedSinceAskAgain}</p> : null}
            </div>
            {asked.state === 'failed' ? <CouldNot detail={asked.detail} /> : null}
            {asked.state === 'answered' && !stale ? <AnswerOf asked={asked} computed={computed} /> : null}
          </>
        );
      }}
    </Computed>
  );
}

interface AnswerOfProps {
  asked: Extract<ReturnType<typeof $asked.get>, { state: 'answered' }>;
  computed: BlendComputed;
}

function AnswerOf({ asked, computed }: AnswerOfProps) {
  const { answer, findings } = asked;
  switch (answer.state) {
    case 'cannot-tell':
      return (
        <Needed
          missing={answer.missing}
          figures={blendFigureNames}
          nameOf={(field) => blendFieldName(field, computed.slice)}
        />
      );
    case 'nothing-to-choose':
    case 'no-answer':
      return <FindingList findings={findings} />;
    case 'infeasible':
      return <NoBlend findings={findings} compromise={answer.compromise} computed={computed} />;
    case 'optimal':
      return (
        <>
          <BlendFound blend={answer.blend} computed={computed} />
          <StandardVerdicts verdicts={asked.verdicts} />
          <WriteBlend masses={answer.blend.shares} what={say.theCheapestBlend} />
          <h3>{say.whatHoldsItBack}</h3>
          {findings.length === 0 ? (
            <p class="say">{say.noBoundHoldsBackNothingWould}</p>
          ) : (
            <FindingList findings={findings} />
          )}
          <Worked>
            <p>{say.derivedLinearProgramming(blendWorkings.worth)}</p>
          </Worked>
        </>
      );
  }
}

/** No blend: what would have to give way, and the blend if it did. */
function NoBlend(props: { findings: readonly Finding[]; compromise: Blend | null; computed: BlendComputed }) {
  const { findings, compromise, computed } = props;
  const of = (...ids: string[]) => findings.filter(({ id }) => ids.includes(id));
  return (
    <>
      <FindingList findings={of('blend.no-blend')} />
      <h3>{say.theShortestWayOut}</h3>
      <FindingList findings={of('blend.relax-together')} />
      <h3>{say.whatWouldDoAlone}</h3>
      <FindingList findings={of('blend.relax-alone', 'blend.no-way-alone')} />
      <Worked>
        <p>{say.derivedLinearProgramming2(blendWorkings.relax)}</p>
      </Worked>
      {compromise === null ? null : (
        <>
          <h3>{say.theBlendWereThatGranted}</h3>
          <BlendFound blend={compromise} computed={computed} />
        </>
      )}
    </>
  );
}

function BlendFound({ blend, computed }: { blend: Blend; computed: BlendComputed }) {
  const { values, currency } = computed;
  const lineOf = (id: string) => values.lines.find(({ materialId }) => materialId === id);
  return (
    <>
      <FigureTable
        caption={say.theBlend}
        columns={[say.material, say.share, say.weight, say.cost]}
        rows={blend.shares.map(({ materialId, share, massG }) => {
          const line = lineOf(materialId);
          return {
            key: materialId,
            head: line?.name || say.unnamedMaterial,
            cells: [
              percentText(share, 1),
              gramsText(massG),
              line?.perKg == null ? '–' : moneyText((massG / 1000) * line.perKg, currency),
            ],
          };
        })}
      />
      <div class="answers">
        <Answer
          label={say.costOfTheCheapestBlend}
          value={moneyText(blend.cost, currency)}
          worked={<p>{say.derivedLinearProgramming3(blendWorkings.leastCost)}</p>}
        />
        <Answer
          label={say.theSameAKilogram}
          value={moneyText(blend.costPerKg, currency)}
          worked={<p>{say.costDividedKilogramsDerived}</p>}
        />
        <MakeupAnswers makeup={blend.makeup} />
      </div>
    </>
  );
}
