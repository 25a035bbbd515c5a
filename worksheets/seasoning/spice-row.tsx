import { fixedText, plainText } from '@larderwright/calc/quantities';
import type { BlendItem, LooseSpice, SeasoningWeight } from '@larderwright/calc/seasoning';
import * as say from '#words/seasoning/spice-row.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { RowTools } from '../parts/row-tools.tsx';
import { TextField } from '../parts/text-field.tsx';
import { editAt } from '../state/store.ts';
import { spiceNotes } from '../words/seasoning.ts';
import type { SeasoningComputed } from './compute.ts';
import { formChoices, mayCarrySalt, SPICE_CHOICES, spiceName, withSpice } from './row-names.ts';

interface SpiceRowProps {
  list: string;
  row: BlendItem | LooseSpice;
  place: number;
  last: boolean;
  weight: SeasoningWeight | null;
  computed: SeasoningComputed | null;
}

/** What is weighed: whole steps of the scale where it shows them. */
function toWeighText({ toWeighG, onScaleG, weighable, dilution }: SeasoningWeight): string {
  if (toWeighG === null) return '–';
  if (dilution) return say.ofItsDilution(gramsText(dilution.useG));
  if (weighable === true && onScaleG !== null) return `${plainText(onScaleG)} g`;
  return gramsText(toWeighG);
}

/** One spice of a blend, or one that goes in by itself. */
export function SpiceRow({ list, row, place, last, weight, computed }: SpiceRowProps) {
  const path = `${list}.${row.id}`;
  const name = spiceName(row) || say.spice(place + 1);
  const findings = computed?.findings ?? [];
  const inBlend = 'parts' in row;
  const measure = inBlend ? `${path}.parts` : `${path}.dose`;
  return (
    <li class="ledger-row ledger-spice" aria-label={name}>
      <ChoiceField
        label={say.spice2}
        value={row.spiceId ?? ''}
        empty={say.oneOfMyOwn}
        choices={SPICE_CHOICES}
        onChoose={(id) => editAt(path, withSpice(row, id))}
        compact
      />
      <ChoiceField
        label={say.form}
        value={row.form}
        choices={formChoices(row)}
        onChoose={(form) => editAt(`${path}.form`, form)}
        compact
      />
      {inBlend ? (
        <NumberField
          path={measure}
          label={say.partsOf(name)}
          kind="ratio"
          range={{ min: 0, max: 100_000 }}
          unitSlot={<span class="field-unit">{say.parts}</span>}
          compact
        />
      ) : (
        <NumberField
          path={measure}
          label={say.doseOf(name)}
          kind="fraction"
          units={['g/kg', '%']}
          range={{ min: 0, max: 0.2 }}
          compact
        />
      )}
      <dl class="ledger-figures">
        {weight?.shareFraction == null ? null : (
          <div>
            <dt>{say.share}</dt>
            <dd>{percentText(weight.shareFraction, 1)}</dd>
          </div>
        )}
        <div>
          <dt>{say.dose}</dt>
          <dd>{weight?.gPerKg == null ? '–' : `${fixedText(weight.gPerKg, 2)} g/kg`}</dd>
        </div>
        <div>
          <dt>{say.weigh}</dt>
          <dd>{weight === null ? '–' : toWeighText(weight)}</dd>
        </div>
      </dl>
      <RowTools list={list} id={row.id} label={name} first={place === 0} last={last} />
      <div class="ledger-more">
        <FindingList findings={at(findings, measure)} />
        {row.spiceId && spiceNotes[row.spiceId] ? <p class="field-hint">{spiceNotes[row.spiceId]}</p> : null}
      </div>
      {row.spiceId === null ? (
        <div class="ledger-more">
          <TextField path={`${path}.name`} label={say.nameOfThisSpice} />
        </div>
      ) : null}
      {mayCarrySalt(row) ? (
        <details class="pack ledger-more">
          <summary>{say.saltInItByThePack}</summary>
          <NumberField
            path={`${path}.salt`}
            label={say.saltIn(name)}
            kind="fraction"
            hint={row.spiceId === null ? say.blankItIsTakenToHold : say.blankTheUsualBandIsCounted}
          />
        </details>
      ) : null}
    </li>
  );
}
