import type { Finding } from '@larderwright/calc/findings';
import type { LabelExtra, LabelPart } from '@larderwright/calc/label';
import * as phrases from '#words/label/carried-food.ts';
import { at, FindingList } from '../parts/finding-list.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { gramsText } from '../parts/number-text.ts';
import { TextBox } from '../parts/text-box.tsx';
import { Worked } from '../parts/worked.tsx';
import { useAt } from '../state/use-shared.ts';
import { labelWorkings } from '../words/label.ts';
import { AllergenTicks } from './allergen-ticks.tsx';
import { FigureBoxes } from './figure-boxes.tsx';
import { saidOfCarried, sayOfCarried } from './line-said.ts';

const MAIN = [
  ['fat', phrases.fat],
  ['protein', phrases.protein],
  ['salt', phrases.salt],
] as const;

/** Crust or jelly of the batch: its weight from its own worksheet, and what the label says of it. */
export function CarriedFood({ part, findings }: { part: LabelPart; findings: readonly Finding[] }) {
  const said = saidOfCarried(useAt('label.extras') as readonly LabelExtra[], part.id);
  const say = (change: Partial<LabelExtra>) => sayOfCarried(part.id, change);
  const name = part.name;
  const from = part.carried === 'crust' ? phrases.theCrustWorksheet : phrases.theJellyWorksheet;
  return (
    <section class="mould" aria-label={name}>
      <div class="mould-head">
        <h3>
          {phrases.from(name, from, part.massG === null ? phrases.weightUnknown : gramsText(part.massG))}
        </h3>
      </div>
      <div class="fields">
        <TextBox
          label={phrases.nameOfTheInTheList(part.proposed)}
          text={said.name}
          onText={(text) => say({ name: text })}
          hint={phrases.blank(part.proposed)}
        />
        <NumberBox
          label={phrases.weightOfInTheFood(name)}
          kind="mass"
          units={['g', 'kg', 'lb']}
          entry={said.mass}
          onEntry={(mass) => say({ mass })}
          hint={phrases.blankWorkedOutType0Leave}
        />
        <TextBox
          label={phrases.isMadeOf(name)}
          text={said.madeOf}
          onText={(text) => say({ madeOf: text })}
          hint={
            said.madeOf === '' && part.madeOf !== ''
              ? phrases.blank2(part.madeOf)
              : phrases.mostFirstAsItWentIn
          }
        />
      </div>
      <FindingList findings={at(findings, part.path)} />
      <Worked>
        <p>{part.carried === 'crust' ? labelWorkings.crust : labelWorkings.jelly}</p>
      </Worked>
      <AllergenTicks
        name={name}
        ticked={said.allergens}
        onTick={(allergens) => say({ allergens })}
        unread={
          part.carried === 'crust' ? phrases.usualPasteNobodyHasReadPacks : phrases.nobodyHasReadThePacks
        }
      />
      <details class="label-more">
        <summary>{phrases.nutritionOf(name)}</summary>
        <div class="fields">
          {MAIN.map(([key, label]) => (
            <NumberBox
              key={key}
              label={phrases.ofWord(label, name)}
              kind="fraction"
              units={['%']}
              entry={said.figures[key]}
              onEntry={(entry) => say({ figures: { ...said.figures, [key]: entry } })}
            />
          ))}
        </div>
        <FigureBoxes name={name} figures={said.figures} onFigures={(figures) => say({ figures })} />
      </details>
    </section>
  );
}
