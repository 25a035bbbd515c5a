import { type CureLimit, type CureRuleSet, cureRuleSet } from '@larderwright/calc/cure';
import { fixedText } from '@larderwright/calc/quantities';
import { isCheckOverdue, sourceOf } from '@larderwright/calc/sources';
import { nowIso } from '../state/clock.ts';
import { useAt } from '../state/use-shared.ts';
import { BASIS_WORDS, FORM_WORDS } from './limit-words.ts';

const ROLE_WORDS: Readonly<Record<CureLimit['role'], string>> = {
  ceiling: 'at most',
  'naming-floor': 'from (for a name)',
  'policy-floor': 'from (policy)',
};

/** Figures of law as printed; a value that is printed rounded shows its exact ground beside it. */
function figureText(limit: CureLimit): string {
  return `${ROLE_WORDS[limit.role]} ${limit.printed} mg/kg`;
}

function whenText(limit: CureLimit): string {
  const kind = limit.kind === 'residual' ? 'left in the product' : 'put in';
  return limit.heating === 'sterilised' ? `${kind}, sterilised in its pack` : kind;
}

/** The chosen rule set as it stands: edition, last check, and every limit with its basis. */
export function RuleSetLimits() {
  const id = useAt('cure.ruleSetId');
  const set = cureRuleSet(typeof id === 'string' ? id : null);
  if (!set) return null;
  return (
    <>
      <p class="say">
        {set.title}; {set.edition}. Compared with the text on {set.reviewed}.
        {isCheckOverdue(set, nowIso()) ? <strong> Check overdue: read the current text.</strong> : null}
        {set.mark === 'memory' ? <strong> Figures from memory: check the current text.</strong> : null}
      </p>
      <details class="worked">
        <summary>The limits of this rule</summary>
        <div class="worked-body">
          <LimitTable set={set} />
          {set.references?.map((reference) => (
            <p key={reference.id}>
              {fixedText(reference.valuePpm, 0)} mg/kg {FORM_WORDS[reference.expressedAs]}:{' '}
              {sourceOf(reference.source).title}. {sourceOf(reference.source).note}
            </p>
          ))}
        </div>
      </details>
    </>
  );
}

function LimitTable({ set }: { set: CureRuleSet }) {
  return (
    <div class="scroll">
      <table>
        <thead>
          <tr>
            <th scope="col">Limit</th>
            <th scope="col">Counted</th>
            <th scope="col">On</th>
            <th scope="col">When</th>
          </tr>
        </thead>
        <tbody>
          {set.limits.map((limit) => (
            <tr key={limit.id}>
              <th scope="row">{figureText(limit)}</th>
              <td>{FORM_WORDS[limit.expressedAs]}</td>
              <td>{BASIS_WORDS[limit.basis]}</td>
              <td>
                {whenText(limit)}
                {limit.mark === 'memory' ? <strong> · from memory</strong> : null}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
