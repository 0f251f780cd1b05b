import type { ReactNode } from "react";

/** One kind of file: its name, what it is for, how it is made. */
export function Way(props: {
  readonly name: string;
  readonly meaning: string;
  readonly children: ReactNode;
}) {
  return (
    <li className="export">
      <div>
        <h3>{props.name}</h3>
        <p className="quiet">{props.meaning}</p>
      </div>
      <div className="row export-acts">{props.children}</div>
    </li>
  );
}

/** Saves one kind of file. */
export function Save(props: {
  readonly what: string;
  readonly text?: string;
  readonly onPress: () => void;
}) {
  const { what, text = "Save", onPress } = props;
  return (
    <button type="button" className="act" aria-label={`Save as ${what}`} onClick={onPress}>
      {text}
    </button>
  );
}
