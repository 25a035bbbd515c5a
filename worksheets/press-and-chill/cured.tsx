import * as say from '#words/press-and-chill/cured.ts';
import { Computed } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { $chill } from './computed.ts';

const STATE_LINE = {
  met: say.curedEnoughForThisRule,
  'not-met': say.notCuredEnoughRuleChooseRule,
  unknown: say.cannotTellWhetherCuredEnough,
  liver: say.tooMuchLiverCountCureChoose,
} as const;

/** What a rule for cured products asks for, and what this batch has. */
export function Cured() {
  return (
    <Computed of={useShared($chill)}>
      {({ cool, cured }) => {
        if (cool.ruleSet === null) return null;
        if (cool.cured === null) {
          return <p class="say">{say.ruleAsksNoCureHoldsUncured}</p>;
        }
        const several = cured.some(({ way }) => way > 1);
        return (
          <div class="cured" data-state={cool.cured}>
            <p>
              <strong>{STATE_LINE[cool.cured]}</strong>
              {several ? say.oneWayInFullIsEnough : ''}
            </p>
            <table>
              <caption>{say.whatTheRuleAsksOfThe}</caption>
              <thead>
                <tr>
                  {several ? <th scope="col">{say.way}</th> : null}
                  <th scope="col">{say.condition}</th>
                  <th scope="col">{say.asked}</th>
                  <th scope="col">{say.thisBatch}</th>
                  <th scope="col">{say.met}</th>
                </tr>
              </thead>
              <tbody>
                {cured.map(({ way, what, asked, has, met }) => (
                  <tr key={`${way} ${what}`}>
                    {several ? <td>{way}</td> : null}
                    <th scope="row">{what}</th>
                    <td>{asked}</td>
                    <td>{has ?? say.notKnown}</td>
                    <td>{met === null ? say.cannotTell : met ? say.met2 : <strong>{say.notMet}</strong>}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </div>
        );
      }}
    </Computed>
  );
}
