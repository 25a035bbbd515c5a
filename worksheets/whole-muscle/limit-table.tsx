import {
  type CureRoute,
  type WholeMuscleFinish,
  type WholeMuscleLimit,
  type WholeMuscleProduct,
  wholeMuscleLimits,
  wholeMuscleRuleSet,
} from '@larderwright/calc/dry-cure';
import { fixedText } from '@larderwright/calc/quantities';
import { isCheckOverdue, sourceOf } from '@larderwright/calc/sources';
import { FigureTable } from '../parts/figure-table.tsx';
import { FORM_WORDS } from '../salt-and-cure/limit-words.ts';
import { nowIso } from '../state/clock.ts';
import { useAt } from '../state/use-shared.ts';
import type { MuscleSlice } from './rule-fields.tsx';

/** What a limit on whole muscle is counted on. */
const BASIS_WORDS: Readonly<Record<WholeMuscleLimit['basis'], string>> = {
  'meat-block': 'the raw meat without skin',
  total: 'the product as made',
  finished: 'the finished product',
};

const ROLE_WORDS: Readonly<Record<WholeMuscleLimit['role'], string>> = {
  ceiling: 'at most',
  'naming-floor': 'from (for a name)',
  'policy-floor': 'from (policy)',
};

/** The chosen rule as it stands for this product: edition, last check, and every limit with its basis. */
export function MuscleLimits({ slice, route }: { slice: MuscleSlice; route: CureRoute }) {
  const id = useAt('cure.ruleSetId');
  const product = useAt(`${slice}.product`) as WholeMuscleProduct | null;
  const finish = useAt(`${slice}.finish`) as WholeMuscleFinish | null;
  const isTraditional = useAt(`${slice}.isTraditional`) === true;
  const set = wholeMuscleRuleSet(typeof id === 'string' ? id : null);
  if (!set) return null;
  const limits = product === null ? [] : wholeMuscleLimits(set, { product, finish, isTraditional, route });
  return (
    <>
      <p class="say">
        {set.title}; {set.edition}. Compared with the text on {set.reviewed}.
        {isCheckOverdue(set, nowIso()) ? <strong> Check overdue: read the current text.</strong> : null}
        {set.mark === 'memory' ? <strong> Figures from memory: check the current text.</strong> : null}
      </p>
      <details class="worked">
        <summary>The limits of this rule for it</summary>
        <div class="worked-body">
          {product === null ? (
            <p>Say what it is first: limits differ.</p>
          ) : limits.length === 0 ? (
            <p>None is carried here for it. That does not mean there is none: ask your authority.</p>
          ) : (
            <FigureTable
              columns={['Limit', 'Counted', 'On', 'When']}
              words
              rows={limits.map((limit) => ({
                key: limit.id,
                head: `${ROLE_WORDS[limit.role]} ${limit.printed} mg/kg`,
                cells: [FORM_WORDS[limit.expressedAs], BASIS_WORDS[limit.basis], whenText(limit)],
              }))}
            />
          )}
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

function whenText(limit: WholeMuscleLimit): string {
  const kind = limit.kind === 'residual' ? 'left in the product' : 'put in';
  const written = limit.asWritten ? `, ${limit.asWritten}` : '';
  return `${kind}${written}${limit.mark === 'memory' ? ' (from memory)' : ''}`;
}
