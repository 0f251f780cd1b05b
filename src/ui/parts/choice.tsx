import { useRef, type KeyboardEvent, type ReactNode } from "react";

/** One of the things to choose from. */
export interface ChoiceOption<T extends string> {
  readonly value: T;
  readonly text: ReactNode;
  /** What it means, in one sentence; shown when pointed at. */
  readonly meaning?: string;
}

/** A few things side by side of which one is chosen; one tab stop, arrows inside. */
export function Choice<T extends string>(props: {
  readonly label: string;
  readonly options: readonly ChoiceOption<T>[];
  readonly value: T;
  readonly onChange: (value: T) => void;
  readonly className?: string;
}) {
  const { label, options, value, onChange, className = "choice" } = props;
  const group = useRef<HTMLDivElement>(null);
  const isKnown = options.some((option) => option.value === value);
  const stop = isKnown ? value : options[0]?.value;
  const keyed = (event: KeyboardEvent) => {
    const by = stepOfKey(event.key);
    if (by === 0) return;
    event.preventDefault();
    const at = options.findIndex((option) => option.value === value);
    const next = (at + by + options.length) % options.length;
    const chosen = options[next];
    if (chosen === undefined) return;
    onChange(chosen.value);
    group.current?.querySelectorAll("button")[next]?.focus();
  };
  return (
    <div className={className} role="radiogroup" aria-label={label} ref={group} onKeyDown={keyed}>
      {options.map((option) => (
        <button
          key={option.value}
          type="button"
          role="radio"
          aria-checked={option.value === value}
          tabIndex={option.value === stop ? 0 : -1}
          title={option.meaning}
          onClick={() => onChange(option.value)}
        >
          {option.text}
        </button>
      ))}
    </div>
  );
}

/** What an arrow key means in a row of things: forward 1, back −1, any other key 0. */
export function stepOfKey(key: string): -1 | 0 | 1 {
  if (key === "ArrowRight" || key === "ArrowDown") return 1;
  if (key === "ArrowLeft" || key === "ArrowUp") return -1;
  return 0;
}
