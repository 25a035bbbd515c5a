import { useMemo } from 'preact/hooks';
import * as say from '#words/batch-sheet/BatchSheet.ts';
import { ChoiceField } from '../parts/choice-field.tsx';
import { later } from '../parts/later.tsx';
import type { SiteLinks } from '../parts/links.ts';
import { NotYet } from '../parts/not-yet.tsx';
import { WorksheetFrame } from '../parts/worksheet-frame.tsx';
import { useShared } from '../state/use-shared.ts';
import { BLANK_SHEET } from './blank-model.ts';
import { $sheet } from './computed.ts';
import { FittedSheets } from './fitted-sheets.tsx';
import type { Paper } from './sheet-page.tsx';
import { usePaper } from './use-paper.ts';

const Verdicts = later(() => import('./verdict-summary.tsx').then((m) => m.VerdictSummary));
const FinishRecord = later(() => import('./finish-record.tsx').then((m) => m.FinishRecord));
const BatchStateSection = later(() => import('./batch-state.tsx').then((m) => m.BatchStateSection));
const AsIssued = later(() => import('./as-issued.tsx').then((m) => m.AsIssued));

const PAPERS = [
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: say.usLetter },
];

interface BatchSheetProps {
  links: SiteLinks;
  /** The standing note of the foot, kept once by the site. */
  standing: string;
  /** Page that finds a record by the code on its sheet. Without it no code is printed. */
  paperBase?: string;
  /** What a print of this page is, where it is not the kitchen's own. */
  mark?: string;
}

/** Batch sheet: the whole batch judged, and the paper it prints on. */
export default function BatchSheet({ links, standing, paperBase, mark }: BatchSheetProps) {
  const computed = useShared($sheet);
  const [paper, choosePaper] = usePaper();
  const model = computed.state === 'ready' ? computed.value.model : BLANK_SHEET;
  const { batchId, check } = model.foot;
  const code = useMemo(() => {
    if (computed.state !== 'ready' || paperBase === undefined || batchId === null || check === null)
      return null;
    return computed.value.drawCode(new URL(paperBase, location.href).href, batchId, check);
  }, [computed, paperBase, batchId, check]);
  return (
    <WorksheetFrame links={links}>
      <section aria-labelledby="verdicts" class="no-print">
        <h2 id="verdicts">{say.howTheBatchStands}</h2>
        <Verdicts meanwhile={<NotYet what={say.noBatchBenchNothingJudged} />} />
      </section>
      <section aria-labelledby="finish" class="no-print">
        <h2 id="finish">{say.finishTheRecord}</h2>
        <FinishRecord meanwhile={<NotYet what={say.theseFieldsOpenWithABatch} />} />
      </section>
      <section aria-labelledby="state">
        <h2 id="state" class="no-print">
          {say.stateReleaseAndWhereItWent}
        </h2>
        <BatchStateSection meanwhile={<NotYet what={say.noBatchOnTheBench} />} />
      </section>
      <section aria-labelledby="paper">
        <div class="no-print">
          <h2 id="paper">{say.onPaper}</h2>
          <p class="say">{say.benchCopyWorkRecordCopyFile}</p>
          <div class="fields">
            <ChoiceField
              label={say.paper}
              value={paper}
              choices={PAPERS}
              onChoose={(value) => choosePaper(value as Paper)}
            />
          </div>
          <p class="buttons">
            <button type="button" class="button-main" onClick={() => print()}>
              {say.printTheSheet}
            </button>
          </p>
          <AsIssued />
        </div>
        {computed.state === 'failed' ? (
          <div class="finding" data-severity="stop" role="alert">
            <p>
              <strong class="finding-word">{say.stop}</strong>{' '}
              {say.sheetCouldNotComputedWhat(computed.detail)}
            </p>
          </div>
        ) : null}
        <FittedSheets model={model} paper={paper} standing={standing} code={code} mark={mark} />
      </section>
    </WorksheetFrame>
  );
}
