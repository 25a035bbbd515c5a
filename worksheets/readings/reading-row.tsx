import type { ProbeReading } from '@larderwright/calc/process';
import type { Entry } from '@larderwright/calc/quantities';
import { Component } from 'preact';
import { useState } from 'preact/hooks';
import * as say from '#words/readings/reading-row.ts';
import { dayWords, wallOf } from '../parts/clock-text.ts';
import { MomentBox } from '../parts/moment-box.tsx';
import { NumberBox } from '../parts/number-box.tsx';
import { TextBox } from '../parts/text-box.tsx';
import { benchNow } from '../state/bench-clock.ts';
import { changeReading } from './edits.ts';

export interface ReadingRowProps {
  logId: string;
  reading: ProbeReading;
  /** The core in °C after the probe's offset, where it differs from what was typed. */
  corrected: string | null;
  /** What is to be said about this reading: a doubt, a late entry. */
  says: readonly string[];
}

const sameWords = (a: readonly string[], b: readonly string[]) =>
  a.length === b.length && a.every((line, i) => line === b[i]);

/** One reading. Redrawn only when it changes: a log may be long and typing must stay quick. */
export class ReadingRow extends Component<ReadingRowProps> {
  override shouldComponentUpdate(next: ReadingRowProps): boolean {
    const now = this.props;
    return (
      next.reading !== now.reading ||
      next.logId !== now.logId ||
      next.corrected !== now.corrected ||
      !sameWords(next.says, now.says)
    );
  }

  override render() {
    return <Row {...this.props} />;
  }
}

function Row({ logId, reading, corrected, says }: ReadingRowProps) {
  const clock = wallOf(reading.at)?.clock ?? '';
  return (
    <tr
      class="reading"
      data-excluded={reading.excluded ? 'yes' : undefined}
      data-flagged={says.length > 0 ? 'yes' : undefined}
    >
      <td class="reading-time">
        <MomentBox
          label={say.timeOfReading(clock)}
          iso={reading.at}
          required
          compact
          withoutDay
          onMoment={(at) => {
            if (at !== null) changeReading(logId, reading.id, { at });
          }}
        />
      </td>
      <td class="reading-temp">
        <NumberBox
          label={say.coreAt(clock)}
          kind="temperature"
          units={['C', 'F']}
          compact
          entry={reading.temperature}
          onEntry={(temperature: Entry) => changeReading(logId, reading.id, { temperature })}
        />
        {corrected ? <p class="reading-corrected">{say.countsAs(corrected)}</p> : null}
      </td>
      <td class="reading-initials">
        <TextBox
          label={say.initialsAt(clock)}
          short
          compact
          text={reading.initials}
          onText={(initials) => changeReading(logId, reading.id, { initials })}
        />
      </td>
      <td class="reading-says">
        {says.map((line) => (
          <p key={line}>{line}</p>
        ))}
        <Exclusion logId={logId} reading={reading} clock={clock} />
      </td>
    </tr>
  );
}

/** A reading is never deleted: it is set aside with a reason and initials, and stays on the page and on paper. */
function Exclusion({ logId, reading, clock }: { logId: string; reading: ProbeReading; clock: string }) {
  const [reason, setReason] = useState('');
  const [initials, setInitials] = useState('');
  const [missing, setMissing] = useState<'reason' | 'initials' | null>(null);
  const { excluded } = reading;
  if (excluded) {
    const wall = wallOf(excluded.at);
    return (
      <div class="excluded">
        <p>
          {say.by(
            <strong>{say.excluded}</strong>,
            excluded.initials || say.noInitials,
            wall ? say.on(dayWords(wall.date), wall.clock) : '',
            excluded.reason || say.noReason,
          )}
        </p>
        <button
          type="button"
          aria-label={say.countTheReadingOfAgain(clock)}
          onClick={() => changeReading(logId, reading.id, { excluded: null })}
        >
          {say.countItAgain}
        </button>
      </div>
    );
  }
  const exclude = () => {
    const lack = reason.trim() === '' ? 'reason' : initials.trim() === '' ? 'initials' : null;
    setMissing(lack);
    if (lack) return;
    const at = benchNow();
    changeReading(logId, reading.id, {
      excluded: { reason: reason.trim(), initials: initials.trim(), at },
    });
  };
  return (
    <details class="exclude">
      <summary>{say.excludeOrChangeTheDay(<span class="unseen"> {say.ofTheReadingOf(clock)}</span>)}</summary>
      <MomentBox
        label={say.timeAndDayOfTheReading}
        iso={reading.at}
        required
        onMoment={(at) => {
          if (at !== null) changeReading(logId, reading.id, { at });
        }}
      />
      <form
        onSubmit={(event) => {
          event.preventDefault();
          exclude();
        }}
      >
        <TextBox
          label={say.whyItDoesNotShowThe}
          text={reason}
          onText={setReason}
          problem={missing === 'reason' ? say.writeWhyWithoutReasonStays : undefined}
        />
        <TextBox
          label={say.initials}
          short
          text={initials}
          onText={setInitials}
          problem={missing === 'initials' ? say.writeWhoSaysSo : undefined}
        />
        <button type="submit">{say.excludeIt}</button>
      </form>
    </details>
  );
}
