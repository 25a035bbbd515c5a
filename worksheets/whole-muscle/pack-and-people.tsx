import type { Finding } from '@larderwright/calc/findings';
import * as say from '#words/whole-muscle/pack-and-people.ts';
import { at } from '../parts/finding-list.tsx';
import { TextField } from '../parts/text-field.tsx';
import { type MuscleSlice, PackFields } from './rule-fields.tsx';

/** The curing salt: its pack and lot, in the heavy frame of the dangerous weight. */
export function CuringSaltPack({ slice, findings }: { slice: MuscleSlice; findings: readonly Finding[] }) {
  return (
    <fieldset class="curing-salt">
      <legend>{say.thePackInUse}</legend>
      <PackFields slice={slice} findings={findings} />
      <div class="fields">
        <TextField path={`${slice}.pack.name`} label={say.nameOnThePack} />
        <TextField path={`${slice}.pack.lot`} label={say.lotOfThePack} />
      </div>
    </fieldset>
  );
}

/** Who weighed and who checked. */
export function TwoPeople({ findings }: { findings: readonly Finding[] }) {
  return (
    <section aria-labelledby="two-people">
      <h2 id="two-people">{say.twoPeopleAtTheScale}</h2>
      <p class="say">{say.oneWeighsAnotherReadsScalePack}</p>
      <div class="fields">
        <TextField path="cure.weighedBy" label={say.weighedBy} findings={at(findings, 'cure.weighedBy')} />
        <TextField path="cure.checkedBy" label={say.checkedBy} findings={at(findings, 'cure.checkedBy')} />
      </div>
    </section>
  );
}

/** Fields of rule, pack and people that show their own findings. */
export function ownMuscleFields(slice: MuscleSlice): readonly string[] {
  return [
    ...['ruleSetId', 'scaleReadability', 'weighedBy', 'checkedBy', 'residual.found'].map(
      (key) => `cure.${key}`,
    ),
    ...['product', 'finish', 'pack.strength.nitrite', 'pack.strength.nitrate'].map(
      (key) => `${slice}.${key}`,
    ),
  ];
}
