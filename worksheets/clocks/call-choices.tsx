import { useShared } from '../state/use-shared.ts';
import { CLOCKS } from '../words/clocks.ts';
import { $awake, $bars, $calls, type CallBar, type CallKind, callOut, switchCall } from './calls.ts';
import { $called } from './ticking.ts';

const BAR_WORDS: Readonly<Record<CallKind, Readonly<Record<CallBar, string>>>> = {
  sound: { 'unknown-here': CLOCKS.noSound, refused: CLOCKS.noSound },
  vibration: { 'unknown-here': CLOCKS.noVibration, refused: CLOCKS.noVibration },
  notification: { 'unknown-here': CLOCKS.noNotification, refused: CLOCKS.refused },
  awake: { 'unknown-here': CLOCKS.noAwake, refused: CLOCKS.awakeRefused },
};
const KINDS: readonly CallKind[] = ['sound', 'vibration', 'notification', 'awake'];

/** How a clock calls on this device. Nothing is asked of the browser before a switch is turned. */
export function CallChoices() {
  const calls = useShared($calls);
  const bars = useShared($bars);
  const awake = useShared($awake);
  return (
    <details class="clock-calls">
      <summary>{CLOCKS.calls}</summary>
      <ul>
        {KINDS.map((kind) => {
          const why = bars[kind];
          return (
            <li key={kind}>
              <label class="clock-switch">
                <input
                  type="checkbox"
                  checked={calls[kind]}
                  onChange={(event) => {
                    const box = event.currentTarget;
                    // What the browser refuses stays off, and the box shows it.
                    void switchCall(kind, box.checked).then(() => {
                      box.checked = $calls.get()[kind];
                    });
                  }}
                />
                <span>{CLOCKS[kind]}</span>
              </label>
              <span role="status">
                {why ? BAR_WORDS[kind][why] : kind === 'awake' && awake ? CLOCKS.awakeOn : null}
              </span>
            </li>
          );
        })}
      </ul>
      <p class="buttons">
        <button
          type="button"
          onClick={() => {
            $called.set(CLOCKS.tried);
            callOut(CLOCKS.tried, 'try');
          }}
        >
          {CLOCKS.tryCall}
        </button>
      </p>
    </details>
  );
}
