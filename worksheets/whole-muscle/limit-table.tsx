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
import * as say from '#words/whole-muscle/limit-table.ts';
import { FigureTable } from '../parts/figure-table.tsx';
import { FORM_WORDS } from '../salt-and-cure/limit-words.ts';
import { nowIso } from '../state/clock.ts';
import { useAt } from '../state/use-shared.ts';
import type { MuscleSlice } from './rule-fields.tsx';

/** What a limit on whole muscle is counted on. */
const BASIS_WORDS: Readonly<Record<WholeMuscleLimit['basis'], string>> = {
  'meat-block': say.theRawMeatWithoutSkin,
  total: say.theProductAsMade,
  finished: say.theFinishedProduct,
};

const ROLE_WORDS: Readonly<Record<WholeMuscleLimit['role'], string>> = {
  ceiling: say.atMost,
  'naming-floor': say.fromForAName,
  'policy-floor': say.fromPolicy,
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
        {say.comparedWithTheTextOn(set.title, set.edition, set.reviewed)}
        {isCheckOverdue(set, nowIso()) ? <strong> {say.checkOverdueReadTheCurrentText}</strong> : null}
        {set.mark === 'memory' ? <strong> {say.figuresMemoryCheckCurrentText}</strong> : null}
      </p>
      <details class="worked">
        <summary>{say.theLimitsOfThisRuleFor}</summary>
        <div class="worked-body">
          {product === null ? (
            <p>{say.sayWhatItIsFirstLimits}</p>
          ) : limits.length === 0 ? (
            <p>{say.noneCarriedHereDoesNotMean}</p>
          ) : (
            <FigureTable
              columns={[say.limit, say.counted, say.on, say.when]}
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
  const kind = limit.kind === 'residual' ? say.leftInTheProduct : say.putIn;
  const written = limit.asWritten ? `, ${limit.asWritten}` : '';
  return `${kind}${written}${limit.mark === 'memory' ? say.fromMemory : ''}`;
}
