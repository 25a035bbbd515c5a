import type { Finding } from '@larderwright/calc/findings';
import type { LabelLine } from '@larderwright/calc/label';
import { type LabelPart, PUBLISHED_COLLAGEN } from '@larderwright/calc/label';
import { ChoiceField } from '../parts/choice-field.tsx';
import { at, FindingList } from '../parts/finding-list.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { TextBox } from '../parts/text-box.tsx';
import { useAt } from '../state/use-shared.ts';
import { AllergenTicks } from './allergen-ticks.tsx';
import { FigureBoxes } from './figure-boxes.tsx';
import { saidOf, sayOfLine } from './line-said.ts';

const YES_NO = [
  { value: 'no', label: 'No' },
  { value: 'yes', label: 'Yes: its quantity is declared' },
];

interface LineSlipProps {
  part: LabelPart;
  findings: readonly Finding[];
}

/** One line of the formula: how the label names it, what it is made of, its allergens and, for meat, its collagen. */
export function LineSlip({ part, findings }: LineSlipProps) {
  const said = saidOf(useAt('label.lines') as readonly LabelLine[], part.id);
  const name = part.ownName || 'this ingredient';
  const say = (change: Partial<LabelLine>) => sayOfLine(part.id, change);
  const isCure = part.line?.part === 'curing-salt';
  return (
    <li class="label-slip">
      <div class="label-slip-head">
        <strong>{name}</strong>
        <span>{part.massG === null ? 'weight unknown' : gramsText(part.massG)}</span>
        <span class="label-slip-name">
          in the list: {isCure ? 'as its salt and its preservatives' : part.name || 'no name'}
        </span>
      </div>
      <FindingList findings={at(findings, part.path)} />
      <details class="label-more">
        <summary>What the label says of {name}</summary>
        <div class="fields">
          {isCure ? null : (
            <TextBox
              label={`Name of ${name} in the list`}
              text={said.name}
              onText={(text) => say({ name: text })}
              hint={`Blank: ${part.proposed || 'its own name'}.`}
            />
          )}
          <ChoiceField
            label={`Does the name of the food stress ${name}?`}
            value={said.stressed ? 'yes' : 'no'}
            choices={YES_NO}
            onChoose={(value) => say({ stressed: value === 'yes' })}
            hint="In the name, in words or in a picture."
          />
          {part.needsMadeOf || said.madeOf !== '' ? (
            <TextBox
              label={`${name} is made of`}
              text={said.madeOf}
              onText={(text) => say({ madeOf: text })}
              hint="In the order of its pack. Additives by class and name."
            />
          ) : null}
        </div>
        {part.meatClass === null ? null : (
          <div class="fields">
            <NumberBox
              label={`Collagen of ${name}`}
              kind="fraction"
              units={['%']}
              entry={said.collagen}
              onEntry={(collagen) => say({ collagen })}
              hint="Per cent of the meat, from an analysis: hydroxyproline × 8."
            />
            <ChoiceField
              label={`Or a published cut for ${name}`}
              value={said.collagenCut ?? ''}
              empty="None: collagen is not known"
              choices={PUBLISHED_COLLAGEN.filter(({ meatClass }) => meatClass === part.meatClass).map(
                (cut) => ({
                  value: cut.id,
                  label: `${cut.name}: ${percentText(cut.fraction)}${cut.of === 'fat-free' ? ' of the fat-free meat' : ''}`,
                }),
              )}
              onChoose={(id) => say({ collagenCut: id || null })}
              hint="Animals differ. An analysis outranks these."
            />
          </div>
        )}
        {isCure || part.line?.part === 'salt' ? null : (
          <>
            <AllergenTicks
              name={name}
              ticked={said.allergens}
              onTick={(allergens) => say({ allergens })}
              unread={part.row ? 'As the composition table says' : 'Nobody has read the pack'}
            />
            <details class="label-more">
              <summary>Nutrition of {name}, by its pack</summary>
              <FigureBoxes name={name} figures={said.figures} onFigures={(figures) => say({ figures })} />
            </details>
          </>
        )}
      </details>
    </li>
  );
}
