import { useEffect, useState } from "react";
import { Button } from "react-aria-components";
import { Choice } from "../parts/choice.tsx";
import { SheetFrame } from "../parts/sheet.tsx";
import { showTheme } from "../state/theme.ts";
import type { Theme } from "../state/page-state.ts";
import { page, undoLimit, usePage } from "../store.ts";
import { keyTable, wordTable } from "./help-table.ts";

const themes: readonly { value: Theme; text: string }[] = [
  { value: "system", text: "as the system" },
  { value: "light", text: "light" },
  { value: "dark", text: "dark" },
];

function chooseTheme(theme: Theme): void {
  showTheme(theme);
  page.setState({ theme });
}

/** Words, keys and the light of the page; opened by its control or by a question mark. */
export function HelpSheet() {
  const [isOpen, setOpen] = useState(false);
  useEffect(() => {
    const keyed = (event: KeyboardEvent) => {
      if (event.key !== "?" || isWritten(event.target)) return;
      event.preventDefault();
      setOpen(true);
    };
    addEventListener("keydown", keyed);
    return () => removeEventListener("keydown", keyed);
  }, []);
  return (
    <>
      <Button className="link" onPress={() => setOpen(true)}>
        Help
      </Button>
      <SheetFrame title="Help" open={{ isOpen, onChange: setOpen }}>
        <HelpWords />
      </SheetFrame>
    </>
  );
}

/** Whether a key goes into a text, where a question mark is a letter like any other. */
function isWritten(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && target.matches("input, textarea, select");
}

/** What the sheet says. */
function HelpWords() {
  const theme = usePage((state) => state.theme);
  return (
    <>
      <p className="sheet-lead">
        Ask with a chord and the melody note above it. The map shows every texture your line-up can
        make of them; each place holds the best voicing there is. Walk it, hear it, change it by
        hand. Sound starts quietly; mind the volume on headphones.
      </p>
      <div className="row sheet-line">
        <span>Light of the page</span>
        <Choice label="Light of the page" options={themes} value={theme} onChange={chooseTheme} />
      </div>
      <h3 className="sheet-part">Keys</h3>
      <dl className="two-columns">
        {keyTable.map(([keys, meaning]) => (
          <div key={keys}>
            <dt>{keys}</dt>
            <dd>{meaning}</dd>
          </div>
        ))}
      </dl>
      <p className="quiet">Up to {undoLimit} steps can be taken back.</p>
      <h3 className="sheet-part">Words</h3>
      <dl className="two-columns">
        {wordTable.map(([word, meaning]) => (
          <div key={word}>
            <dt>{word}</dt>
            <dd>{meaning}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
