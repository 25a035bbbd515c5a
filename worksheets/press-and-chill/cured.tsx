import { Computed } from '../parts/computed.tsx';
import { useShared } from '../state/use-shared.ts';
import { $chill } from './computed.ts';

const STATE_LINE = {
  met: 'Cured enough for this rule.',
  'not-met': 'NOT cured enough for this rule: choose a rule for uncured products.',
  unknown: 'CANNOT TELL whether it is cured enough: fill in the formula and the curing salt.',
  liver: 'Too much liver to count on the cure: choose a rule for uncured products.',
} as const;

/** What a rule for cured products asks for, and what this batch has. */
export function Cured() {
  return (
    <Computed of={useShared($chill)}>
      {({ cool, cured }) => {
        if (cool.ruleSet === null) return null;
        if (cool.cured === null) {
          return <p class="say">This rule asks for no cure: it holds for uncured products too.</p>;
        }
        const several = cured.some(({ way }) => way > 1);
        return (
          <div class="cured" data-state={cool.cured}>
            <p>
              <strong>{STATE_LINE[cool.cured]}</strong>
              {several ? ' One way in full is enough.' : ''}
            </p>
            <table>
              <caption>What the rule asks of the cure</caption>
              <thead>
                <tr>
                  {several ? <th scope="col">Way</th> : null}
                  <th scope="col">Condition</th>
                  <th scope="col">Asked</th>
                  <th scope="col">This batch</th>
                  <th scope="col">Met</th>
                </tr>
              </thead>
              <tbody>
                {cured.map(({ way, what, asked, has, met }) => (
                  <tr key={`${way} ${what}`}>
                    {several ? <td>{way}</td> : null}
                    <th scope="row">{what}</th>
                    <td>{asked}</td>
                    <td>{has ?? 'not known'}</td>
                    <td>{met === null ? 'cannot tell' : met ? 'met' : <strong>NOT MET</strong>}</td>
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
