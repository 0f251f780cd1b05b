import { fail, ok, type Count, type Result } from "../../base/index.ts";
import { pathText } from "./path-text.ts";
import { projectSchema } from "./project-schema.ts";
import type { Project } from "./project-types.ts";
import { MOST_PROJECT_CHARACTERS } from "./read-project.ts";
import { projectFile } from "./write-project.ts";

/** A project's text that is certain to be read again. */
export interface FittedProject {
  /** As writeProject prints it. */
  readonly text: string;
  /** Steps of undo and redo that were left out, because the whole would be too large. */
  readonly stepsLeftOut: Count;
}

/**
 * Writes a project with as much of its undo history as can be read again. The steps farthest from
 * the present are left out first.
 * @param project - the project
 * @returns the text; or the problem "project-unfit", when even the present step cannot be read again
 * @throws RangeError when a player is none that the band can make
 */
export function fitProject(project: Project): Result<FittedProject> {
  const { past, future } = project.history;
  let reach = Math.max(past.length, future.length);
  for (;;) {
    const near = within(project, reach);
    const file = projectFile(near, { withHistory: true });
    const checked = projectSchema.safeParse(file);
    const text = checked.success ? JSON.stringify(file) : "";
    if (checked.success && text.length <= MOST_PROJECT_CHARACTERS) {
      const { history } = near;
      const steps = history.past.length + history.future.length;
      return ok({ text, stepsLeftOut: past.length + future.length - steps });
    }
    if (reach === 0) {
      const where = checked.success ? "it" : pathText(checked.error.issues[0]?.path ?? []);
      return fail(
        "project-unfit",
        `The project cannot be saved: ${where} is too large or damaged.`,
      );
    }
    reach = Math.floor(reach / 2);
  }
}

/** The project with so many steps on either side of the present. */
function within(project: Project, reach: Count): Project {
  const { history } = project;
  const past = reach === 0 ? [] : history.past.slice(-reach);
  return { ...project, history: { ...history, past, future: history.future.slice(0, reach) } };
}
