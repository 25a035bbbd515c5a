import type { BlendLine, BlendMaterial } from '@larderwright/calc/blend';
import type { Finding } from '@larderwright/calc/findings';
import type { Unit } from '@larderwright/calc/quantities';
import * as say from '#words/lean-and-fat/material-row.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { FindingList, within } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { percentText } from '../parts/number-text.ts';
import { RowTools } from '../parts/row-tools.tsx';
import { editAt } from '../state/store.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { $asked } from './asked.ts';
import { MaterialName } from './material-name.tsx';

const MASSES: readonly Unit[] = ['kg', 'g', 'lb'];
const BASES = [
  { value: 'kg', label: say.theKg },
  { value: 'lb', label: say.theLb },
];
const DECLARED = [
  { name: say.fat, label: say.fatInIt, short: say.fat },
  { name: say.protein, label: say.proteinInIt, short: say.protein },
  { name: say.water, label: say.waterInIt, short: say.water },
  { name: say.salt, label: say.saltInIt, short: say.salt },
] as const;

interface MaterialRowProps {
  material: BlendMaterial;
  place: number;
  last: boolean;
  line: BlendLine | null;
  figures: string;
  findings: readonly Finding[];
  currency: string;
}

/** One material: what it is, what is in it, what it costs, how much there is. */
export function MaterialRow(props: MaterialRowProps) {
  const { material, place, last, line, figures, findings, currency } = props;
  const asked = useShared($asked);
  const slice = useAt('blend');
  const answered = asked.state === 'answered' && asked.slice === slice ? asked.findings : [];
  const path = `blend.materials.${material.id}`;
  const name = material.name || say.material(place + 1);
  const mine = within([...findings, ...answered], path);
  const share = (fraction: number | null | undefined) => (fraction == null ? '–' : percentText(fraction, 1));
  const field = (key: string) => ({ path: `${path}.${key}` });
  return (
    <li class="ledger-row ledger-material" aria-label={name}>
      <div class="ledger-name">
        <MaterialName material={material} />
        {figures === '' ? null : <p class="field-hint">{figures}</p>}
      </div>
      <NumberField
        {...field('price')}
        label={say.price}
        kind="money"
        unitSlot={<span class="field-unit">{currency || say.money}</span>}
      />
      <ChoiceField
        label={say.priceFor}
        value={material.priceBasis}
        choices={BASES}
        onChoose={(basis) => editAt(`${path}.priceBasis`, basis)}
      />
      <NumberField {...field('stock')} label={say.thereIs} kind="mass" units={MASSES} />
      <RowTools list="blend.materials" id={material.id} label={name} first={place === 0} last={last} />
      <dl class="ledger-figures">
        {DECLARED.map(({ name: part, short }) => (
          <div key={part}>
            <dt>{short}</dt>
            <dd>{share(line?.[`${part}Fraction`])}</dd>
          </div>
        ))}
      </dl>
      <div class="ledger-more">
        <details class="pack">
          <summary>{say.packFiguresSharesFixedWeight(name)}</summary>
          <div class="fields">
            {DECLARED.map((part) => (
              <NumberField
                key={part.name}
                {...field(`declared.${part.name}`)}
                label={part.label}
                kind="fraction"
              />
            ))}
            <NumberField {...field('minShare')} label={say.atLeastOfTheBlend} kind="fraction" />
            <NumberField {...field('maxShare')} label={say.atMostOfTheBlend} kind="fraction" />
            <NumberField
              {...field('locked')}
              label={say.fixedWeight}
              kind="mass"
              units={MASSES}
              hint={say.goesWhateverTargetBlankFree}
            />
          </div>
        </details>
        {/* In the width of the row: a field of it is too narrow, and one of them may be folded away. */}
        <FindingList findings={mine} />
      </div>
    </li>
  );
}
