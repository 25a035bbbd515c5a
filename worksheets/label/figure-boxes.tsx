import type { TypedFigures } from '@larderwright/calc/label';
import type { Entry } from '@larderwright/calc/quantities';
import * as say from '#words/label/figure-boxes.ts';
import { NumberBox } from '../parts/number-box.tsx';

const NAMES: Readonly<Record<keyof TypedFigures, string>> = {
  saturates: say.saturates,
  carbohydrate: say.carbohydrateWithoutFibre,
  sugars: say.sugars,
  fibre: say.fibre,
  alcohol: say.alcoholByMass,
};
const KEYS = Object.keys(NAMES) as (keyof TypedFigures)[];

interface FigureBoxesProps<Figures extends TypedFigures> {
  name: string;
  figures: Figures;
  onFigures: (figures: Figures) => void;
}

/** Nutrition of one ingredient as its pack prints it. Blank: the table's, or unknown. */
export function FigureBoxes<Figures extends TypedFigures>(props: FigureBoxesProps<Figures>) {
  const { name, figures, onFigures } = props;
  return (
    <div class="fields">
      {KEYS.map((key) => (
        <NumberBox
          key={key}
          label={say.ofWord(NAMES[key], name)}
          kind="fraction"
          units={['%']}
          entry={figures[key]}
          onEntry={(entry: Entry) => onFigures({ ...figures, [key]: entry })}
        />
      ))}
    </div>
  );
}
