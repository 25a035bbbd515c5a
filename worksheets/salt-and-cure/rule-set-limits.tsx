import { type CureLimit, type CureRuleSet, cureRuleSet } from '@larderwright/calc/cure';
import { fixedText } from '@larderwright/calc/quantities';
import { isCheckOverdue, sourceOf } from '@larderwright/calc/sources';
import * as say from '#words/salt-and-cure/rule-set-limits.ts';
import { FigureTable } from '../parts/figure-table.tsx';
import { nowIso } from '../state/clock.ts';
import { useAt } from '../state/use-shared.ts';
import { BASIS_WORDS, FORM_WORDS } from './limit-words.ts';

const ROLE_WORDS: Readonly<Record<CureLimit['role'], string>> = {
  ceiling: say.atMost,
  'naming-floor': say.fromForAName,
  'policy-floor': say.fromPolicy,
};

/** Figures of law as printed; a value that is printed rounded shows its exact ground beside it. */
function figureText(limit: CureLimit): string {
  return `${ROLE_WORDS[limit.role]} ${limit.printed} mg/kg`;
}

function whenText(limit: CureLimit): string {
  const kind = limit.kind === 'residual' ? say.leftInTheProduct : say.putIn;
  return limit.heating === 'sterilised' ? say.sterilisedInItsPack(kind) : kind;
}

/** The chosen rule set as it stands: edition, last check, and every limit with its basis. */
export function RuleSetLimits() {
  const id = useAt('cure.ruleSetId');
  const set = cureRuleSet(typeof id === 'string' ? id : null);
  if (!set) return null;
  return (
    <>
      <p class="say">
        {say.comparedWithTheTextOn(set.title, set.edition, set.reviewed)}
        {isCheckOverdue(set, nowIso()) ? <strong> {say.checkOverdueReadTheCurrentText}</strong> : null}
        {set.mark === 'memory' ? <strong> {say.figuresMemoryCheckCurrentText}</strong> : null}
      </p>
      <details class="worked">
        <summary>{say.theLimitsOfThisRule}</summary>
        <div class="worked-body">
          <LimitTable set={set} />
          <p>
            {set.title}: {set.sources.map((id) => sourceOf(id).title).join('; ')}; {set.edition}.
          </p>
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
    <FigureTable
      columns={[say.limit, say.counted, say.on, say.when]}
      words
      rows={set.limits.map((limit) => ({
        key: limit.id,
        head: figureText(limit),
        cells: [
          FORM_WORDS[limit.expressedAs],
          BASIS_WORDS[limit.basis],
          limit.mark === 'memory' ? say.fromMemory(whenText(limit)) : whenText(limit),
        ],
      }))}
    />
  );
}
