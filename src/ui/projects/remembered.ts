const place = "hornweave-project";
/** Remembered for a project that is not stored, so that no other one is opened in its place. */
const none = "none";

/**
 * The project worked on last: in this tab, else in any.
 * @returns its id; null for one that is not stored; undefined when nothing is remembered
 */
export function rememberedProject(): string | null | undefined {
  const id = read(() => sessionStorage) ?? read(() => localStorage) ?? undefined;
  return id === none ? null : id;
}

/**
 * Remembers which project is worked on, where the browser allows.
 * @param id - its id; null for one that is not stored
 */
export function rememberProject(id: string | null): void {
  for (const storage of [() => sessionStorage, () => localStorage])
    try {
      storage().setItem(place, id ?? none);
    } catch {
      // A refused storage costs the memory of what was open, nothing else.
    }
}

function read(storage: () => Storage): string | null {
  try {
    return storage().getItem(place);
  } catch {
    return null;
  }
}

/**
 * A new project's id.
 * @returns 32 hexadecimal digits by chance
 */
export function newProjectId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/**
 * A name no stored project has.
 * @param wanted - the name to begin from
 * @param taken - names in use
 * @returns the name itself, or with the first free number behind it: "Sketch 1" gives "Sketch 2"
 */
export function freeName(wanted: string, taken: readonly string[]): string {
  if (!taken.includes(wanted)) return wanted;
  const [, stem = wanted, digits = "1"] = /^(.*?) (\d{1,6})$/.exec(wanted) ?? [];
  for (let number = Number(digits) + 1; ; number += 1) {
    const name = `${stem} ${number}`;
    if (!taken.includes(name)) return name;
  }
}
