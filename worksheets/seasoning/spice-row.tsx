import { fixedText, plainText } from '@larderwright/calc/quantities';
import type { BlendItem, LooseSpice, SeasoningWeight } from '@larderwright/calc/seasoning';
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
  if (dilution) return `${gramsText(dilution.useG)} of its dilution`;
  if (weighable === true && onScaleG !== null) return `${plainText(onScaleG)} g`;
  return gramsText(toWeighG);
}

/** One spice of a blend, or one that goes in by itself. */
export function SpiceRow({ list, row, place, last, weight, computed }: SpiceRowProps) {
  const path = `${list}.${row.id}`;
  const name = spiceName(row) || `Spice ${place + 1}`;
  const findings = computed?.findings ?? [];
  const inBlend = 'parts' in row;
  const measure = inBlend ? `${path}.parts` : `${path}.dose`;
  return (
    <li class="ledger-row ledger-spice" aria-label={name}>
      <ChoiceField
        label="Spice"
        value={row.spiceId ?? ''}
        empty="One of my own"
        choices={SPICE_CHOICES}
        onChoose={(id) => editAt(path, withSpice(row, id))}
        compact
      />
      <ChoiceField
        label="Form"
        value={row.form}
        choices={formChoices(row)}
        onChoose={(form) => editAt(`${path}.form`, form)}
        compact
      />
      {inBlend ? (
        <NumberField
          path={measure}
          label={`Parts of ${name}`}
          kind="ratio"
          range={{ min: 0, max: 100_000 }}
          unitSlot={<span class="field-unit">parts</span>}
          compact
        />
      ) : (
        <NumberField
          path={measure}
          label={`Dose of ${name}`}
          kind="fraction"
          units={['g/kg', '%']}
          range={{ min: 0, max: 0.2 }}
          compact
        />
      )}
      <dl class="ledger-figures">
        {weight?.shareFraction == null ? null : (
          <div>
            <dt>Share</dt>
            <dd>{percentText(weight.shareFraction, 1)}</dd>
          </div>
        )}
        <div>
          <dt>Dose</dt>
          <dd>{weight?.gPerKg == null ? '–' : `${fixedText(weight.gPerKg, 2)} g/kg`}</dd>
        </div>
        <div>
          <dt>Weigh</dt>
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
          <TextField path={`${path}.name`} label="Name of this spice" />
        </div>
      ) : null}
      {mayCarrySalt(row) ? (
        <details class="pack ledger-more">
          <summary>Salt in it, by the pack</summary>
          <NumberField
            path={`${path}.salt`}
            label={`Salt in ${name}`}
            kind="fraction"
            hint={
              row.spiceId === null ? 'Blank: it is taken to hold none.' : 'Blank: the usual band is counted.'
            }
          />
        </details>
      ) : null}
    </li>
  );
}
