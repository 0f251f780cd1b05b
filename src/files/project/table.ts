import type { Count } from "../../base/index.ts";

/** Rows that are written once and then named by their index; objects are known by identity first. */
export class Table<T, Row> {
  readonly rows: Row[] = [];
  private readonly known = new Map<T, Count>();
  private readonly printed = new Map<string, Count>();
  private readonly make: (value: T) => Row;

  /**
   * A table without rows.
   * @param make - turns a value into what is written of it
   */
  constructor(make: (value: T) => Row) {
    this.make = make;
  }

  /**
   * Where a value stands; it is entered when it is new.
   * @param value - the value
   * @returns its row
   */
  indexOf(value: T): Count {
    const known = this.known.get(value);
    if (known !== undefined) return known;
    const row = this.make(value);
    const text = JSON.stringify(row);
    const index = this.printed.get(text) ?? this.rows.push(row) - 1;
    this.printed.set(text, index);
    this.known.set(value, index);
    return index;
  }
}
