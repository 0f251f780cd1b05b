import { fail, type Result } from "../../base/index.ts";
import type * as files from "../../files/index.ts";
import type { ProjectStore } from "../../files/index.ts";

type Files = typeof files;

let door: Promise<Files> | undefined;
let loaded: Files | undefined;
let store: Promise<ProjectStore> | undefined;

/**
 * Reading and writing files; loaded when it is first needed.
 * @returns the folder's door
 */
export function filesDoor(): Promise<Files> {
  door ??= import("../../files/index.ts").then(
    (module) => (loaded = module),
    (fault: unknown) => {
      door = undefined;
      throw fault;
    },
  );
  return door;
}

/**
 * The same where it is needed at once.
 * @returns the folder's door, or nothing while it is not loaded
 */
export const filesLoaded = (): Files | undefined => loaded;

/**
 * Does something with the projects stored on this machine.
 * @param work - what to do
 * @returns its answer, or a problem when the part that keeps projects could not be loaded
 */
export async function withStore<T>(
  work: (store: ProjectStore) => Promise<Result<T>>,
): Promise<Result<T>> {
  try {
    store ??= filesDoor().then(({ openProjectStore }) => openProjectStore());
    return await work(await store);
  } catch {
    store = undefined;
    return fail(
      "storage-unloaded",
      "The part of the page that keeps projects could not be loaded: check the connection.",
    );
  }
}
