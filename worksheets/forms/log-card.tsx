import * as say from '#words/forms/log-card.ts';
import { CurveStrip } from '../batch-sheet/curve-strip.tsx';
import { LogStrip } from '../batch-sheet/log-strip.tsx';
import type { CookBlock, CoolBlock, SheetVerdict } from '../batch-sheet/sheet-model.ts';
import type { Paper } from '../batch-sheet/sheet-page.tsx';
import { SheetVerdicts } from '../batch-sheet/sheet-verdict.tsx';
import { Block, WriteIn } from '../batch-sheet/write-in.tsx';
import { BLANK_HEAD, type CardHead } from '../parts/blank-head.ts';
import { PrintCard } from '../parts/print-card.tsx';
import { LOG_WORDS } from '../words/forms.ts';
import { DrawGrid } from './draw-grid.tsx';
import type { LogSheet } from './log-model.ts';
import { BLANK_ROWS, LOG_CURVE_MM } from './log-size.ts';

interface LogCardProps {
  /** Null: the empty form. */
  log: LogSheet | null;
  head: CardHead | null;
  stops: readonly string[];
  paper: Paper;
  standing: string;
}

/** Cook and cooling on one page: limits, curve, readings, verdicts, signatures. */
export function LogCard({ log, head, stops, paper, standing }: LogCardProps) {
  const decided = log?.deviations ?? [];
  return (
    <PrintCard
      title={LOG_WORDS.title}
      head={head ?? BLANK_HEAD}
      paper={paper}
      stops={stops}
      standing={standing}
      noRules={LOG_WORDS.noRules}
    >
      <div class="write-row">
        <WriteIn label={say.product} value={log?.header.product} wide />
        <WriteIn label={say.moulds} value={log?.header.moulds} wide />
        <WriteIn label={say.madeBy} value={log?.header.madeBy} />
        <WriteIn label={say.day} />
      </div>
      <CookPart cook={log?.cook ?? null} />
      <CoolPart cool={log?.cool ?? null} />
      <Block no={3} title={log?.curve ? say.curveOfTheCore : LOG_WORDS.draw} stacked>
        {log?.curve ? <CurveStrip curve={log.curve} size={LOG_CURVE_MM} /> : <DrawGrid />}
      </Block>
      <Block no={4} title={LOG_WORDS.deviation} stacked>
        {decided.map(({ id, text }) => (
          <p class="rule-line" key={id}>
            {text}
          </p>
        ))}
        {decided.length === 0 ? <span class="write-line" /> : null}
        <span class="write-line" />
      </Block>
      <div class="write-row">
        <WriteIn label={say.cookWatchedBy} />
        <WriteIn label={say.coolingWatchedBy} />
        <WriteIn label={say.checkedByAnotherPerson} value={log?.checkedBy} wide />
        <WriteIn label={say.verifiedDay} />
      </div>
    </PrintCard>
  );
}

function Strips({ logs }: Pick<CookBlock, 'logs'>) {
  if (logs.length === 0) return <LogStrip log={null} blank={12 * BLANK_ROWS} />;
  return logs.map((log) => <LogStrip key={log.name} log={log} />);
}

function CookPart({ cook }: { cook: CookBlock | null }) {
  return (
    <Block no={1} title={LOG_WORDS.cookReadings} stacked>
      <div class="write-row">
        <WriteIn label={say.limit} value={cook?.limit} unit="°C for" wide />
        <WriteIn label={say.probeMustShow} value={cook?.action} unit="°C" />
        <WriteIn label={say.bath} value={cook?.medium} unit="°C" />
        <WriteIn label={say.oven} value={cook?.oven} unit="°C" />
      </div>
      <div class="write-row">
        <WriteIn label={say.inWord} value={cook?.started} unit="time" />
        <WriteIn label={say.limitReached} value={cook?.limitReached} unit="time" />
        <WriteIn label={say.heldUntil} value={cook?.heldUntil} unit="time" />
        <WriteIn label={say.out} value={cook?.ended} unit="time" />
        <WriteIn label={say.peak} value={cook?.peak} unit="°C" />
      </div>
      <Strips logs={cook?.logs ?? []} />
      <SheetVerdicts verdicts={cook?.verdicts ?? []} />
      {cook?.remarks.map((remark) => (
        <p class="rule-line" key={remark}>
          {remark}
        </p>
      ))}
    </Block>
  );
}

/** Legs of the rule, or two to write in. */
const BLANK_LEGS: CoolBlock['legs'] = [say.leg1FromToCIn, say.leg2FromToCIn].map((title) => ({
  title,
  latest: null,
  elapsed: null,
  verdict: null,
}));

function CoolPart({ cool }: { cool: CoolBlock | null }) {
  const legs = cool && cool.legs.length > 0 ? cool.legs : BLANK_LEGS;
  return (
    <Block no={2} title={LOG_WORDS.coolReadings} stacked>
      <div class="write-row">
        <WriteIn label={say.clockStarts} value={cool?.started} unit="time" />
        <WriteIn label={say.press} value={cool?.press} unit="kg" />
        <WriteIn label={say.pressOnAt} unit="time" />
        <WriteIn label={say.chilledBy} wide />
        <WriteIn label={say.iceToppedUp} unit="time" />
      </div>
      {legs.map((leg) => (
        <div class="write-row" key={leg.title}>
          <WriteIn label={leg.title} value={leg.elapsed} wide />
          <WriteIn label={say.atLatest} value={leg.latest} unit="time" />
          <WriteIn
            label={say.verdict}
            value={leg.verdict ? legVerdict(leg.verdict) : null}
            wide
            unit="pass / fail"
          />
        </div>
      ))}
      <Strips logs={cool?.logs ?? []} />
      <SheetVerdicts verdicts={[...legs.flatMap(unsaid), ...(cool?.verdicts ?? [])]} />
    </Block>
  );
}

/** A failed leg is told in full at the head of the sheet; one that cannot be told is told below. */
const unsaid = ({ verdict }: CoolBlock['legs'][number]) =>
  verdict?.state === 'cannot-tell' ? [verdict] : [];

function legVerdict({ state, basis, fromMemory }: SheetVerdict): string {
  return `${LEG_WORD[state]}${basis ? ` [${basis}${fromMemory ? say.limitFromMemory : ''}]` : ''}`;
}

const LEG_WORD = { pass: say.pass, fail: say.fail, 'cannot-tell': say.cannotTell } as const;
