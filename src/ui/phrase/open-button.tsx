import { useRef } from "react";
import { melodyEndings, openMelodyFile } from "./open-file.ts";

/** Opens a file with a melody. */
export function OpenButton({ className = "act" }: { readonly className?: string }) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button
        type="button"
        className={className}
        title="ABC (.abc, .txt) or MusicXML (.musicxml, .xml, .mxl); a file can be dropped on the page as well"
        onClick={() => input.current?.click()}
      >
        Open a file
      </button>
      <input
        ref={input}
        className="unseen"
        type="file"
        accept={melodyEndings}
        tabIndex={-1}
        aria-hidden="true"
        data-testid="melody-file"
        onChange={({ target }) => {
          const [file] = target.files ?? [];
          if (file !== undefined) void openMelodyFile(file);
          target.value = "";
        }}
      />
    </>
  );
}
