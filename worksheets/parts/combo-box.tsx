import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { $life } from '../state/store.ts';
import { LONGEST_LINE } from '../state/typed.ts';
import { useShared } from '../state/use-shared.ts';
import { FieldFrame } from './field-frame.tsx';
import { useTyping } from './use-typing.ts';

export interface ComboOption {
  id: string;
  label: string;
  /** A second, lighter line. */
  detail?: string | undefined;
}

interface ComboBoxProps {
  label: string;
  text: string;
  /** Options for the text as it stands, best first, already cut to a readable number. */
  options: readonly ComboOption[];
  /** Said under the field while the list is open: how many there are, or why there are none. */
  status: string;
  onText: (text: string) => void;
  onPick: (option: ComboOption) => void;
  /** The field is reached: time to fetch the list. */
  onReach?: () => void;
  /** The field is left with the text as it stands. */
  onLeave?: () => void;
  hint?: ComponentChildren;
  problem?: string | undefined;
  compact?: boolean | undefined;
  focusOnMount?: boolean | undefined;
}

/**
 * A text box with a list of suggestions. Any text may stand; an option is taken by Enter, tap or click and
 * never by leaving the field. Keys: arrows choose, Enter takes, Escape closes the list and keeps the text.
 */
export function ComboBox(props: ComboBoxProps) {
  const { label, text, options, status, onText, onPick, onReach, onLeave, hint, problem, compact } = props;
  const id = useId();
  const [open, setOpen] = useState(false);
  const [active, setActive] = useState(-1);
  const box = useRef<HTMLInputElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const waking = useShared($life) === 'waking';
  const { onInput, cutNote } = useTyping(LONGEST_LINE, (typed) => {
    setOpen(true);
    setActive(-1);
    onText(typed);
  });
  const chosen = open ? options[active] : undefined;

  useEffect(() => {
    if (props.focusOnMount) box.current?.focus();
  }, []);
  useEffect(() => {
    if (chosen) list.current?.children[active]?.scrollIntoView({ block: 'nearest' });
  }, [chosen, active]);

  // On a phone the list would open below the edge of the screen.
  useEffect(() => {
    if (open) list.current?.parentElement?.scrollIntoView({ block: 'nearest' });
  }, [open]);

  const pick = (option: ComboOption) => {
    setOpen(false);
    setActive(-1);
    onPick(option);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.isComposing) return;
    const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    if (step !== 0 && options.length > 0) {
      event.preventDefault();
      setOpen(true);
      const from = active === -1 && step === -1 ? options.length : active;
      setActive((from + step + options.length) % options.length);
    } else if (event.key === 'Enter' && chosen) {
      event.preventDefault();
      pick(chosen);
    } else if (event.key === 'Escape' && open) {
      event.preventDefault();
      setOpen(false);
      setActive(-1);
    }
  };

  return (
    <FieldFrame
      id={id}
      label={label}
      hint={hint}
      problem={[problem, cutNote].filter(Boolean).join(' ') || undefined}
      compact={compact}
    >
      <div class="combo">
        <input
          ref={box}
          id={id}
          class="field-input field-words"
          type="text"
          role="combobox"
          autocomplete="off"
          aria-autocomplete="list"
          aria-expanded={open}
          aria-controls={`${id}-list`}
          aria-activedescendant={chosen ? `${id}-${active}` : undefined}
          aria-describedby={`${id}-says`}
          value={text}
          readOnly={waking}
          onInput={onInput}
          onKeyDown={onKeyDown}
          onClick={() => setOpen(true)}
          onFocus={() => onReach?.()}
          onBlur={() => {
            setOpen(false);
            setActive(-1);
            onLeave?.();
          }}
        />
        <div class="combo-drop" hidden={!open}>
          <p class="combo-status" role="status">
            {open ? status : ''}
          </p>
          <div ref={list} id={`${id}-list`} class="combo-list" role="listbox" aria-label={label}>
            {open
              ? options.map((option, index) => (
                  // biome-ignore lint/a11y/useKeyWithClickEvents: keys go to the text box, which keeps the focus and points here
                  <div
                    key={option.id}
                    id={`${id}-${index}`}
                    class="combo-option"
                    role="option"
                    aria-selected={index === active}
                    tabIndex={-1}
                    // Pressing must not take the focus from the text box, which would close the list first.
                    onMouseDown={(event) => event.preventDefault()}
                    onClick={() => pick(option)}
                  >
                    {option.label}
                    {option.detail ? <small>{option.detail}</small> : null}
                  </div>
                ))
              : null}
          </div>
        </div>
      </div>
    </FieldFrame>
  );
}
