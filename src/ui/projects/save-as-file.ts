import { announce } from "../actions/announce.ts";
import { fileNameOf, handOver } from "../actions/hand-over.ts";
import { warn } from "./projects-state.ts";
import { projectOnPage } from "./save.ts";
import { filesDoor } from "./store-door.ts";

/** Said where the network went before a part of the page was there. */
export const unloaded =
  "The part of the page that reads files could not be loaded: check the connection.";

/** Saves the project on the page, with its undo steps, as a file. */
export async function saveAsFile(): Promise<void> {
  try {
    const { fitProject } = await filesDoor();
    const project = projectOnPage();
    const fitted = fitProject(project);
    if (!fitted.ok) return warn(fitted.problem.message);
    const fileName = fileNameOf([project.name], "json");
    handOver(fitted.value.text, fileName, "application/json");
    announce(`Saved as ${fileName}.`);
  } catch {
    warn(unloaded);
  }
}
