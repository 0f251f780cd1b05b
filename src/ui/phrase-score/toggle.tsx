import type { ReactNode } from "react";

/** A thing that is on or off; off is dashed, so that it never goes by colour alone. */
export function Toggle(props: {
  readonly isOn: boolean;
  readonly label?: string;
  readonly meaning?: string;
  readonly isDisabled?: boolean;
  readonly onTurn: (isOn: boolean) => void;
  readonly children: ReactNode;
}) {
  const { isOn, label, meaning, isDisabled = false, onTurn, children } = props;
  return (
    <button
      type="button"
      className="toggle"
      aria-pressed={isOn}
      aria-label={label}
      title={meaning}
      disabled={isDisabled}
      onClick={() => onTurn(!isOn)}
    >
      {children}
    </button>
  );
}
