import type { ComponentChildren } from 'preact';
import * as say from '#words/parts/print-card.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { usePaper } from '../batch-sheet/use-paper.ts';
import type { CardHead } from './blank-head.ts';
import { ChoiceField } from './choice-field.tsx';

const PAPERS = [
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: say.usLetter },
];

interface CardDeskProps {
  /** What the card is for, in a sentence. */
  about: string;
  /** The cards on the paper that was chosen. */
  children: (paper: Paper) => ComponentChildren;
}

/**
 * The last section of a worksheet: its cards as they print, the paper, and the button. Only the cards go to
 * paper from such a page, so every input of the worksheet must stand on one of them.
 */
export function CardDesk({ about, children }: CardDeskProps) {
  const [paper, choosePaper] = usePaper();
  return (
    <section aria-labelledby="paper">
      <div class="no-print">
        <h2 id="paper">{say.onPaper}</h2>
        <p class="say">{say.blackOnlyWithoutBatchPrints(about)}</p>
        <div class="fields">
          <ChoiceField
            label={say.paper}
            value={paper}
            choices={PAPERS}
            onChoose={(value) => choosePaper(value === 'letter' ? 'letter' : 'a4')}
          />
        </div>
        <p class="buttons">
          <button type="button" class="button-main" onClick={() => print()}>
            {say.print}
          </button>
        </p>
      </div>
      {/* The paper is wider than a phone: it scrolls by itself, and by the keyboard too. */}
      <section class="sheet-desk" tabindex={0} aria-label={say.theCardAsItPrints}>
        {children(paper)}
      </section>
    </section>
  );
}

interface PrintCardProps {
  title: string;
  head: CardHead;
  paper: Paper;
  /** Stops and failed limits in words, printed above all else. */
  stops: readonly string[];
  /** The standing note every sheet carries. */
  standing: string;
  /** What the rules of this card are called where none is chosen. */
  noRules?: string;
  /** Left out: the number of the batch. Null: the card is of no one batch. */
  number?: null;
  children: ComponentChildren;
}

/**
 * One card of paper: title strip, stops, blocks, foot. It grows past a page rather than cut anything off;
 * no block is parted. The flags of its figures are explained in the foot.
 */
export function PrintCard(props: PrintCardProps) {
  const { title, head, number, paper, stops, standing, children } = props;
  const { noRules = say.ruleSetNoneChosen } = props;
  return (
    <article class="sheet card" data-paper={paper} aria-label={title}>
      <div class="sheet-fit">
        <header class="sheet-head">
          <h3 class="card-title">{title}</h3>
          {head.demo ? <p class="sheet-demo">{say.demoInventedNotARealBatch}</p> : null}
          {number === null ? null : <p class="sheet-no">{head.batchNo ?? say.batchNo}</p>}
        </header>
        {head.outOfUse ? <p class="sheet-state">{head.outOfUse}</p> : null}
        {stops.length > 0 ? (
          <ul class="sheet-stops">
            {stops.map((stop) => (
              <li key={stop}>
                <strong>{say.stop}</strong> {stop}
              </li>
            ))}
          </ul>
        ) : null}
        {children}
        <footer class="sheet-foot">
          <p>
            <strong>{standing}</strong>
          </p>
          <p>
            {say.eEnteredDDefaultWWorked(
              head.ruleSets.length > 0 ? head.ruleSets.join(' · ') : noRules,
              head.version ? ` · ${head.version}` : '',
              head.batchId ? ` · ${head.batchId}` : '',
              head.printedAt ? say.printed(head.printedAt) : '',
            )}
          </p>
        </footer>
      </div>
    </article>
  );
}
