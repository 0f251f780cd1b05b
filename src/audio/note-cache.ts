import type { Count } from "../base/index.ts";

/** Bytes a cache may hold, unless told otherwise: 96 MB. */
export const CACHE_BUDGET_BYTES = 96 * 1024 * 1024;

/** A store that forgets what was used longest ago once it holds more bytes than it may. */
export class NoteCache {
  private readonly entries = new Map<string, { readonly value: unknown; readonly bytes: Count }>();
  private held = 0;

  /** @param budgetBytes - the most it may hold */
  constructor(private readonly budgetBytes: Count = CACHE_BUDGET_BYTES) {}

  /** Bytes held now; never above the budget. */
  get bytes(): Count {
    return this.held;
  }

  /** Entries held now. */
  get size(): Count {
    return this.entries.size;
  }

  /**
   * Finds a value or makes and keeps it. One bigger than the whole budget is made but not kept.
   * @param key - names the value; the caller sees to it that a key always means one type
   * @param make - makes the value when it is not there
   * @param bytesOf - size of a value in bytes
   * @returns the value
   */
  take<T>(key: string, make: () => T, bytesOf: (value: T) => Count): T {
    const found = this.entries.get(key);
    if (found) {
      this.entries.delete(key);
      this.entries.set(key, found);
      return found.value as T;
    }
    const value = make();
    const bytes = bytesOf(value);
    if (bytes <= this.budgetBytes) {
      this.entries.set(key, { value, bytes });
      this.held += bytes;
      this.forgetOldest();
    }
    return value;
  }

  private forgetOldest(): void {
    for (const [key, { bytes }] of this.entries) {
      if (this.held <= this.budgetBytes) return;
      this.entries.delete(key);
      this.held -= bytes;
    }
  }
}
