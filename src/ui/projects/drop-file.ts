import { openFile } from "./file-moves.ts";

/** Lets a project file be dropped anywhere on the page; a dropped file never replaces the page. */
export function takeDroppedFiles(): void {
  const hasFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") === true;
  document.addEventListener("dragover", (event) => {
    if (hasFiles(event)) event.preventDefault();
  });
  document.addEventListener("drop", (event) => {
    // A part of the page that takes files of its own has had its turn before.
    if (!hasFiles(event) || event.defaultPrevented) return;
    event.preventDefault();
    const [file] = event.dataTransfer?.files ?? [];
    if (file !== undefined) void openFile(file);
  });
}
